package liftlint.rules.route.eye_on_padeye_test

import data.liftlint.rules.route.eye_on_padeye.finding

legs(kind) := {"legs": [{"key": "leg/hook/1", "ends_in": kind, "ends_at": "padeye"}]}

test_breaks if finding == {"leg/hook/1"} with input as legs("wire_rope_sling")

test_meets if finding == set() with input as legs("shackle")
