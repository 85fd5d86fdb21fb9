package liftlint.rules.grommet.circumference_short_test

import data.liftlint.rules.grommet.circumference_short.finding

found(around) := got if {
	got := finding with input as {"grommets": [{"key": "grommet/G1", "circumference_d": around}]}
}

test_breaks if found(95.9) == {"grommet/G1"}

test_meets_at_96_diameters if found(96) == set()

test_unknown if finding == set() with input as {"grommets": [{"key": "grommet/G1"}]}
