package liftlint.rules.hardware.attachment_pulled_flat_test

import data.liftlint.rules.hardware.attachment_pulled_flat.finding

points(pull, rated) := {"attachments": [{
	"key": "attachment/A", "legs": 1, "rated_to_horizontal_given": true,
	"pull_angle_from_horizontal_deg": pull, "rated_to_angle_from_horizontal_deg": rated,
}]}

test_breaks if finding == {"attachment/A"} with input as points(59.9, 60)

test_meets if finding == set() with input as points(60, 60)
