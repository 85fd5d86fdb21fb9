package liftlint.rules.hardware.steels_mixed_test

import data.liftlint.rules.hardware.steels_mixed.finding

legs(mixed) := {"legs": [{"key": "leg/hook/1", "steels_named": 2, "steels_mixed": mixed}]}

test_breaks if finding == {"leg/hook/1"} with input as legs(true)

test_meets if finding == set() with input as legs(false)

test_one_named if {
	finding == set() with input as {"legs": [{"key": "leg/hook/1", "steels_named": 1, "steels_mixed": false}]}
}
