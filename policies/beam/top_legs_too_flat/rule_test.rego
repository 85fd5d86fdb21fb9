package liftlint.rules.beam.top_legs_too_flat_test

import data.liftlint.rules.beam.top_legs_too_flat.finding

found(given, angle, least) := got if {
	got := finding with input as {"beams": [{
		"key": "beam/SB1",
		"least_top_angle_given": given,
		"top_angle_from_horizontal_deg": angle,
		"least_top_angle_from_horizontal_deg": least,
	}]}
}

test_breaks if found(true, 44.9, 45) == {"beam/SB1"}

test_meets_at_its_angle if found(true, 45, 45) == set()

test_meets_steeper if found(true, 60, 45) == set()

test_no_angle_given if found(false, 30, 45) == set()

test_not_known_how_it_hangs if {
	finding == set() with input as {"beams": [{"key": "beam/SB1", "least_top_angle_given": true, "least_top_angle_from_horizontal_deg": 45}]}
}
