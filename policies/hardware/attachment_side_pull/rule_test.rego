package liftlint.rules.hardware.attachment_side_pull_test

import data.liftlint.rules.hardware.attachment_side_pull.finding

points(kind, off) := {"attachments": [{"key": "attachment/A", "kind": kind, "legs": 1, "rated_to_plane_given": false, "out_of_plane_deg": off}]}

test_breaks_padeye if finding == {"attachment/A"} with input as points("padeye", 5.01)

test_breaks_eyebolt if finding == {"attachment/A"} with input as points("eyebolt", 5.01)

test_meets if finding == set() with input as points("padeye", 5)
