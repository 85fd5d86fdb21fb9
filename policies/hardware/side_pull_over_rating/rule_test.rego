package liftlint.rules.hardware.side_pull_over_rating_test

import data.liftlint.rules.hardware.side_pull_over_rating.finding

points(off, rated) := {"attachments": [{
	"key": "attachment/A", "kind": "padeye", "legs": 1, "rated_to_plane_given": true,
	"out_of_plane_deg": off, "rated_to_angle_from_plane_deg": rated,
}]}

test_breaks if finding == {"attachment/A"} with input as points(10.1, 10)

test_meets if finding == set() with input as points(10, 10)
