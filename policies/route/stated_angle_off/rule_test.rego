package liftlint.rules.route.stated_angle_off_test

import data.liftlint.rules.route.stated_angle_off.finding

legs(off) := {"legs": [{"key": "leg/hook/1", "angle_stated": true, "stated_angle_off_deg": off}]}

test_breaks if finding == {"leg/hook/1"} with input as legs(3.01)

test_meets if finding == set() with input as legs(3)

test_not_stated if finding == set() with input as {"legs": [{"key": "leg/hook/1", "angle_stated": false}]}
