package policy_test

import "liftlint/internal/facts"

func breaksFit() []broken {
	return []broken{
		{"fit/legs_on_hook", "", func(d *facts.Document) { d.Hooks[0].LegsDirect = 4 },
			"<legs_direct 4> legs go over the hook itself; with more than <most 2> a link gathers them", "#/hook", 4},
		{"fit/thimble_over_body", "", func(d *facts.Document) {
			d.Fits[0].Thimble, d.Fits[0].BodyWidthM, d.Fits[0].EyeWidthM = true, ptr(0.08), ptr(0.045)
		}, "the crane hook is <body_width_m 0.08> wide; the thimble in S1's upper eye has <eye_width_m 0.045> inside", "#/fit/0", 0.08},
		{"fit/eye_over_body", "too_wide", func(d *facts.Document) { d.Fits[0].WidthOverLengthRatio = ptr(0.6) },
			"the width of the crane hook is <width_over_length_ratio 0.6> of the length of S1's upper eye; at most <error_ratio 0.5> keeps the sides of the eye from opening at the crotch", "#/fit/0", 0.6},
		{"fit/eye_over_body", "spread", func(d *facts.Document) { d.Fits[0].EyeIncludedAngleDeg = ptr(33.0) },
			"S1's upper eye opens to an included angle of <eye_included_angle_deg 33> over the crane hook; up to <note_deg 30> is usual", "#/fit/0", 33},
	}
}
