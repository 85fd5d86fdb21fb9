package policy_test

import "liftlint/internal/facts"

func breaksAngle() []broken {
	return []broken{
		{"angle/leg_too_flat", "too_flat", func(d *facts.Document) { d.Legs[0].AngleFromHorizontalDeg = ptr(28.5) },
			"leg hook/1 hangs at <angle_from_horizontal_deg 28.5> from horizontal; at least <error_deg 30> is asked for", "#/leg/0", 28.5},
		{"angle/leg_too_flat", "flat", func(d *facts.Document) { d.Legs[0].AngleFromHorizontalDeg = ptr(40.0) },
			"leg hook/1 hangs at <angle_from_horizontal_deg 40> from horizontal; under <warning_deg 45> small errors of length or height change its pull much", "#/leg/0", 40},
		{"angle/leg_too_flat", "below_usual", func(d *facts.Document) { d.Legs[0].AngleFromHorizontalDeg = ptr(55.0) },
			"leg hook/1 hangs at <angle_from_horizontal_deg 55> from horizontal; legs are usually kept at <note_deg 60> or steeper", "#/leg/0", 55},
		{"angle/flatter_than_tag", "", func(d *facts.Document) { d.Legs[0].BandLeastDeg = ptr(70.0) },
			"leg hook/1 hangs at <angle_from_horizontal_deg 65> from horizontal; its tag holds down to <band_least_from_horizontal_deg 70>", "#/leg/0", 65},
		{"angle/flatter_than_tag_angle", "", func(d *facts.Document) { d.Legs[0].TagAngleDeg = ptr(70.0) },
			"leg hook/1 hangs at <angle_from_horizontal_deg 65> from horizontal, flatter than the <tag_angle_from_horizontal_deg 70> on the tag of its bridle: the maker or a qualified person has to allow that", "#/leg/0", 65},
	}
}
