package policy_test

import "liftlint/internal/facts"

func breaksRoute() []broken {
	return []broken{
		{"route/closed_in_closed", "", func(d *facts.Document) { d.Fits[0].BothClosed = true },
			"S1's upper eye and the crane hook are both closed, and neither goes into the other: write the shackle that joins them, or the pin of the part in line if that end is a jaw", "#/fit/0", 0},
		{"route/eye_on_plate_above", "", func(d *facts.Document) { d.Legs[0].EyesOnPlatesAbove = 1 },
			"leg hook/1 hangs by its sling straight in a plate of the beam: put the shackle that joins them into the leg, or below the point in `by`", "#/leg/0", 0},
		{"route/hook_height_off", "", func(d *facts.Document) {
			d.Hooks[0].HeightGiven, d.Hooks[0].HeightM, d.Hooks[0].HeightOffM = true, ptr(6.5), ptr(0.5)
		},
			"hook hook stands <height_above_datum_m 6.5> over the datum with this gear, <height_off_m 0.5> off what the plan gives; up to <most_m 0.1> is allowed", "#/hook", 0.5},
		{"route/eye_on_padeye", "", func(d *facts.Document) { d.Legs[0].EndsIn = "wire_rope_sling" },
			"leg hook/1 ends with its wire_rope_sling straight on padeye A: put the shackle or hook that joins them into the leg", "#/leg/0", 0},
		{"route/eye_on_padeye", "", func(d *facts.Document) {
			d.Legs[0].EndsIn, d.Legs[0].EndsAt, d.Legs[0].To = "grommet", "beam", "SB1.TL"
		},
			"leg hook/1 ends with its grommet straight on beam SB1.TL: put the shackle or hook that joins them into the leg", "#/leg/0", 0},
		{"route/length_open", "", func(d *facts.Document) { d.Legs[0].LengthOpen, d.Legs[0].LengthNeededM = true, ptr(2.5) },
			"the plan leaves the length of the sling in leg hook/1 open; for the load to hang as it is meant to, it needs <length_needed_m 2.5> bearing to bearing", "#/leg/0", 0},
		{"route/adjuster_out_of_range", "", func(d *facts.Document) { d.Gear[turnbuckle].OutsideRangeM = ptr(0.03) },
			"TB1 is set to <length_m 0.9>, which is <outside_range_m 0.03> outside what it can be set to", "#/gear/5", 0.03},
		{"route/eye_to_eye", "", func(d *facts.Document) { d.Legs[0].EyeToEye = 1 },
			"leg hook/1 puts one sling's eye straight into another's: write the shackle that joins them", "#/leg/0", 0},
		{"route/gear_unused", "", func(d *facts.Document) { d.Gear[0].Uses = 0 },
			"S1 is in no leg and no link: use it, or take it out of the plan", "#/gear/0", 0},
		{"route/attachment_unused", "", func(d *facts.Document) { d.Attachments[0].Legs = 0 },
			"no leg goes to attachment A: give it a leg, take it out of the plan, or say that it is left free: `spare: true`", "#/attachment/0", 0},
		{"route/stated_angle_off", "flatter", func(d *facts.Document) { d.Legs[0].StatedAngleDeg, d.Legs[0].StatedAngleOffDeg = ptr(70.0), ptr(5.0) },
			"leg hook/1 is stated to hang at <stated_angle_from_horizontal_deg 70> from horizontal and hangs at <angle_from_horizontal_deg 65>: off by <stated_angle_off_deg 5>; up to <most_deg 3> is allowed", "#/leg/0", 5},
		{"route/stated_angle_off", "steeper", func(d *facts.Document) { d.Legs[0].StatedAngleDeg, d.Legs[0].StatedAngleOffDeg = ptr(60.0), ptr(5.0) },
			"leg hook/1 is stated to hang at <stated_angle_from_horizontal_deg 60> from horizontal and hangs at <angle_from_horizontal_deg 65>: off by <stated_angle_off_deg 5>; up to <most_deg 3> is allowed", "#/leg/0", 5},
	}
}
