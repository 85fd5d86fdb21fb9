package liftlint.rules.hardware.not_seated_test

import data.liftlint.rules.hardware.not_seated.finding

points(kind, seated) := {"attachments": [{"key": "attachment/A", "kind": kind, "legs": 1, "seated": seated}]}

test_breaks_eyebolt if finding == {"attachment/A"} with input as points("eyebolt", "not_seated")

test_breaks_hoist_ring if finding == {"attachment/A"} with input as points("hoist_ring", "not_seated")

test_meets if finding == set() with input as points("hoist_ring", "seated")

test_has_no_seat if finding == set() with input as points("eyebolt", "has_no_seat")
