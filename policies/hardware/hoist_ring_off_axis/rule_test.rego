package liftlint.rules.hardware.hoist_ring_off_axis_test

import data.liftlint.rules.hardware.hoist_ring_off_axis.finding

points(off, rated) := {"attachments": [{"key": "attachment/A", "kind": "hoist_ring", "legs": 1, "off_axis_deg": off, "rated_to_angle_from_axis_deg": rated}]}

test_breaks if finding == {"attachment/A"} with input as points(45.1, 45)

test_meets if finding == set() with input as points(45, 45)
