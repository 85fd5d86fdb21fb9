package liftlint.rules.load.center_of_gravity_outside_test

import data.liftlint.rules.load.center_of_gravity_outside.finding

loads(off) := {"loads": [{"key": "load", "size_given": true, "center_outside_m": off}]}

test_breaks if finding == {"load"} with input as loads(0.001)

test_meets if finding == set() with input as loads(0)

test_no_size if finding == set() with input as {"loads": [{"key": "load", "size_given": false}]}
