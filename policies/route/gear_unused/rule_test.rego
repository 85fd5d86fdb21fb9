package liftlint.rules.route.gear_unused_test

import data.liftlint.rules.route.gear_unused.finding

gear(n) := {"gear": [{"key": "gear/K1", "id": "K1", "uses": n}]}

test_breaks if finding == {"gear/K1"} with input as gear(0)

test_meets if finding == set() with input as gear(1)
