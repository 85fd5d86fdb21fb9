package liftlint.rules.grommet.bent_too_sharply_above_test

import data.liftlint.rules.grommet.bent_too_sharply_above.finding

found(bend) := got if {
	got := finding with input as {"grommets": [{"key": "grommet/G1", "upper_bend_d": bend}]}
}

test_breaks if found(0.99) == {"grommet/G1"}

test_meets_at_its_own_thickness if found(1) == set()

test_unknown if finding == set() with input as {"grommets": [{"key": "grommet/G1"}]}
