package liftlint.rules.hardware.eyebolt_plain_at_angle_test

import data.liftlint.rules.hardware.eyebolt_plain_at_angle.finding

points(pattern, off) := {"attachments": [{"key": "attachment/A", "kind": "eyebolt", "legs": 1, "pattern": pattern, "off_axis_deg": off}]}

test_breaks if finding == {"attachment/A"} with input as points("plain", 5.01)

test_meets_in_line if finding == set() with input as points("plain", 5)

test_meets_shouldered if finding == set() with input as points("shouldered", 40)
