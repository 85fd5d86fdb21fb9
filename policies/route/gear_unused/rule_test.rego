package liftlint.rules.route.gear_unused_test

import data.liftlint.rules.route.gear_unused.finding

gear(n) := {"gear": [{"key": "gear/K1", "id": "K1", "in_bridle": false, "uses": n}]}

test_breaks if finding == {"gear/K1"} with input as gear(0)

test_meets if finding == set() with input as gear(1)

test_in_a_bridle_that_is_not_used if {
	finding == set() with input as {"gear": [{"key": "gear/S1", "id": "S1", "in_bridle": true, "uses": 0}]}
}
