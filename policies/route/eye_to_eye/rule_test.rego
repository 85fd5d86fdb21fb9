package liftlint.rules.route.eye_to_eye_test

import data.liftlint.rules.route.eye_to_eye.finding

legs(n) := {"legs": [{"key": "leg/hook/1", "eye_to_eye": n}]}

test_breaks if finding == {"leg/hook/1"} with input as legs(1)

test_meets if finding == set() with input as legs(0)
