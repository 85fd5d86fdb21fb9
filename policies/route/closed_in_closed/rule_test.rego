package liftlint.rules.route.closed_in_closed_test

import data.liftlint.rules.route.closed_in_closed.finding

found(both) := got if {
	got := finding with input as {"fits": [{"key": "fit/hook/1/S1/lower", "both_closed": both}]}
}

test_breaks if found(true) == {"fit/hook/1/S1/lower"}

test_meets if found(false) == set()
