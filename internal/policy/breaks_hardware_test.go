package policy_test

import "liftlint/internal/facts"

func breaksHardware() []broken {
	return append(breaksHardwareOfAttachments(), []broken{
		{"hardware/round_pin", "", func(d *facts.Document) { d.Gear[4].PinKind = ptr("round") },
			"K1 has a round pin, held by its cotter alone: take one with a screw pin, or a bolt with nut and cotter", "#/gear/4", 0},
		{"hardware/screw_pin_can_turn", "left_in_place", func(d *facts.Document) { d.Gear[4].PinTurnedBy = ptr("time") },
			"K1 stays in place, and its screw pin can work loose: take one with a bolt, nut and cotter, or mouse the pin and give `pin_secured`", "#/gear/4", 0},
		{"hardware/screw_pin_can_turn", "turned", func(d *facts.Document) { d.Gear[4].PinTurnedBy = ptr("turning_load") },
			"the load is turned on K1, which can turn its screw pin out: take one with a bolt, nut and cotter, or mouse the pin and give `pin_secured`", "#/gear/4", 0},
		{"hardware/steel_under_chain", "", func(d *facts.Document) { d.Gear[4].SteelAgainstChain = "weaker" },
			"K1 holds chain of grade 80 and is of a lower grade: take a fitting of the chain's own grade, or have the sling rated and tagged by its weakest part", "#/gear/4", 0},
		{"hardware/steels_mixed", "", func(d *facts.Document) { d.Legs[0].SteelsMixed = true },
			"the fittings of leg hook/1 are of different grades of steel: the weakest decides, and spares are mixed up easily", "#/leg/0", 0},
		{"hardware/temperature", "hot", func(d *facts.Document) { d.Gear[4].HighestC = ptr(220.0) },
			"K1 gets as hot as <highest_c 220>; above <hot_c 204> its maker has to say what it may carry", "#/gear/4", 220},
		{"hardware/temperature", "graded_hot", func(d *facts.Document) { d.Gear[4].Steel, d.Gear[4].HighestC = "grade_8", ptr(600.0) },
			"K1 gets as hot as <highest_c 600>; above <graded_hot_c 538> its maker has to say what it may carry", "#/gear/4", 600},
		{"hardware/temperature", "graded_cold", func(d *facts.Document) { d.Gear[4].Steel, d.Gear[4].LowestC = "grade_10", ptr(-45.0) },
			"K1 gets as cold as <lowest_c -45>; below <graded_cold_c -40> its maker has to say what it may carry", "#/gear/4", -45},
		{"hardware/temperature", "cold", func(d *facts.Document) { d.Gear[4].LowestC = ptr(-45.0) },
			"K1 gets as cold as <lowest_c -45>; below <cold_c -40> its maker has to say what it may carry", "#/gear/4", -45},
	}...)
}

func breaksHardwareOfAttachments() []broken {
	of := func(which int, change func(*facts.Attachment)) func(*facts.Document) {
		return func(d *facts.Document) { change(&d.Attachments[which]) }
	}
	return []broken{
		{"hardware/attachment_pulled_flat", "", of(ratedToHorizontal, func(a *facts.Attachment) { a.PullAngleFromHorizontalDeg = ptr(40.0) }),
			"attachment A is pulled at <pull_angle_from_horizontal_deg 40> from the horizontal of what it stands on; it is rated down to <rated_to_angle_from_horizontal_deg 45>", "#/attachment/0", 40},
		{"hardware/rated_direction_not_given", "", of(ratedToHorizontal, func(a *facts.Attachment) {
			a.RatedToHorizontalGiven, a.RatedToHorizontalDeg, a.PullAngleFromHorizontalDeg = false, nil, ptr(40.0)
		}),
			"attachment A is pulled at <pull_angle_from_horizontal_deg 40> from the load's horizontal, and the plan does not say that its rated load holds there, as it has to under <least_deg 45>: give `rated_to_angle_from_horizontal`", "#/attachment/0", 40},
		{"hardware/attachment_side_pull", "", of(ratedToHorizontal, func(a *facts.Attachment) { a.OutOfPlaneDeg = ptr(9.0) }),
			"attachment A is pulled <out_of_plane_deg 9> out of its plane, and the plan gives no side pull that it is rated for; up to <most_deg 5> is allowed", "#/attachment/0", 9},
		{"hardware/side_pull_over_rating", "", of(ratedToPlane, func(a *facts.Attachment) { a.OutOfPlaneDeg = ptr(12.0) }),
			"attachment A is pulled <out_of_plane_deg 12> out of its plane; it is rated to <rated_to_angle_from_plane_deg 10>", "#/attachment/1", 12},
		{"hardware/eyebolt_plain_at_angle", "", of(eyebolt, func(a *facts.Attachment) { a.Pattern, a.Seated = ptr("plain"), ptr("has_no_seat") }),
			"eyebolt A has no shoulder and is pulled <off_axis_deg 25> off its axis; it is for pulls in line, up to <in_line_deg 5>", "#/attachment/2", 25},
		{"hardware/not_seated", "", of(eyebolt, func(a *facts.Attachment) { a.Seated = ptr("not_seated") }),
			"attachment A does not bear tight on the load: tighten it, shim it, or spot-face its seat", "#/attachment/2", 0},
		{"hardware/hoist_ring_off_axis", "", of(hoistRing, func(a *facts.Attachment) { a.RatedToAxisDeg = ptr(20.0) }),
			"hoist ring A is pulled <off_axis_deg 25> off its axis; it is rated to <rated_to_angle_from_axis_deg 20>", "#/attachment/3", 25},
	}
}
