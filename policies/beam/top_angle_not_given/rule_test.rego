package liftlint.rules.beam.top_angle_not_given_test

import data.liftlint.rules.beam.top_angle_not_given.finding

found(kind, angle_given, rated, angle) := got if {
	got := finding with input as {"beams": [{
		"key": "beam/SB1",
		"kind": kind,
		"least_top_angle_given": angle_given,
		"compression_rated": rated,
		"top_angle_from_horizontal_deg": angle,
	}]}
}

test_breaks if found("spreader_beam", false, false, 84.9) == {"beam/SB1"}

test_meets_plumb if found("spreader_beam", false, false, 85) == set()

test_angle_given if found("spreader_beam", true, false, 60) == set()

test_compression_rated if found("spreader_beam", false, true, 60) == set()

test_lifting_beams_bend if found("lifting_beam", false, false, 60) == set()
