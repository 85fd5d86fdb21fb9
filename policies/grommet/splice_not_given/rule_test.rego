package liftlint.rules.grommet.splice_not_given_test

import data.liftlint.rules.grommet.splice_not_given.finding

found(given) := got if {
	got := finding with input as {"grommets": [{"key": "grommet/G1", "splice_given": given}]}
}

test_breaks if found(false) == {"grommet/G1"}

test_meets if found(true) == set()
