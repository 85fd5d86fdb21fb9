package liftlint.rules.route.eye_on_padeye_test

import data.liftlint.rules.route.eye_on_padeye.finding

legs(kind, at) := {"legs": [{"key": "leg/hook/1", "ends_in": kind, "ends_at": at}]}

test_breaks_on_a_padeye if finding == {"leg/hook/1"} with input as legs("wire_rope_sling", "padeye")

test_breaks_on_an_eyebolt if finding == {"leg/hook/1"} with input as legs("wire_rope_sling", "eyebolt")

test_breaks_on_a_hoist_ring if finding == {"leg/hook/1"} with input as legs("wire_rope_sling", "hoist_ring")

test_breaks_on_an_insert if finding == {"leg/hook/1"} with input as legs("wire_rope_sling", "insert")

test_meets_with_a_shackle if finding == set() with input as legs("shackle", "padeye")

test_meets_with_a_hook if finding == set() with input as legs("hook", "hoist_ring")
