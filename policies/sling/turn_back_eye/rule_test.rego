package liftlint.rules.sling.turn_back_eye_test

import data.liftlint.rules.sling.turn_back_eye.finding

gear(kinds) := {"gear": [{"key": "gear/S1", "kind": "wire_rope_sling", "uses": 1, "eye_kinds": kinds}]}

test_breaks if finding == {"gear/S1"} with input as gear(["flemish_sleeve", "turn_back_sleeve"])

test_meets if finding == set() with input as gear(["flemish_sleeve"])
