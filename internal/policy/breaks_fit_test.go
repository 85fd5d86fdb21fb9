package policy_test

import "liftlint/internal/facts"

func breaksFit() []broken {
	return append(breaksHooks(), []broken{
		{"fit/thimble_over_body", "", func(d *facts.Document) {
			d.Fits[0].Thimble, d.Fits[0].BodyWidthM, d.Fits[0].EyeWidthM = true, ptr(0.08), ptr(0.045)
		}, "the crane hook is <body_width_m 0.08> wide; the thimble in S1's upper eye is <eye_width_m 0.045> wide inside", "#/fit/0", 0.08},
		{"fit/eye_over_body", "too_wide", func(d *facts.Document) { d.Fits[0].WidthOverLengthRatio = ptr(0.6) },
			"the width of the crane hook is <width_over_length_ratio 0.6> of the length of S1's upper eye; at most <error_ratio 0.5> keeps the sides of the eye from opening at the crotch", "#/fit/0", 0.6},
		{"fit/eye_over_body", "spread", func(d *facts.Document) { d.Fits[0].EyeIncludedAngleDeg = ptr(33.0) },
			"S1's upper eye opens to an included angle of <eye_included_angle_deg 33> over the crane hook; up to <note_deg 30> is usual", "#/fit/0", 33},
		{"fit/pin_over_eye_width", "", func(d *facts.Document) { d.Fits[0].EyeWidthM = ptr(0.04) },
			"the crane hook is <body_width_m 0.05> wide; S1's upper eye is <eye_width_m 0.04> wide where nothing spreads it", "#/fit/0", 0.05},
		{"fit/thimble_size", "too_large", func(d *facts.Document) { d.Fits[3].ThimbleOverRopeRatio = ptr(1.14) },
			"the thimble in S4's upper eye is made for a thicker rope, of <thimble_over_rope_ratio 1.14> of the <rope_diameter_m 0.02> here; over <most_ratio 1.03> the rope lies loose in its groove", "#/fit/3", 1.14},
		{"fit/thimble_size", "too_small", func(d *facts.Document) { d.Fits[3].ThimbleOverRopeRatio = ptr(0.9) },
			"the thimble in S4's upper eye is made for a thinner rope, of <thimble_over_rope_ratio 0.9> of the <rope_diameter_m 0.02> here; under <least_ratio 0.97> its groove pinches the rope", "#/fit/3", 0.9},
		{"fit/pin_in_hole", "too_thick", func(d *facts.Document) { d.Fits[4].NeedsM = ptr(0.026) },
			"K1's pin is <needs_m 0.026> thick; the hole of attachment A is <room_m 0.025> wide", "#/fit/4", 0.026},
		{"fit/pin_in_hole", "play", func(d *facts.Document) { d.Fits[4].FilledRatio = ptr(0.7) },
			"K1's pin fills <filled_ratio 0.7> of the hole of attachment A; under <least_ratio 0.75> it has so much play that it bears on a line", "#/fit/4", 0.7},
		{"fit/ears_through_hole", "closed", func(d *facts.Document) { d.Fits[9].PinOverHole = ptr(1.1) },
			"K3's bow can't lie in the hole of point SB1.BL: the pin that the ears stand round is <pin_over_hole_ratio 1.1> of its width, and from <closed_ratio 1> on no ear passes; turn the shackle round, so that its pin goes through", "#/fit/9", 1.1},
		{"fit/ears_through_hole", "tight", func(d *facts.Document) { d.Fits[9].PinOverHole = ptr(0.6) },
			"K3's bow is to lie in the hole of point SB1.BL, of which the shackle's pin is <pin_over_hole_ratio 0.6>; its ears are as a rule twice as wide as the pin, and over <tight_ratio 0.5> they do not pass: turn the shackle round, so that its pin goes through", "#/fit/9", 0.6},
		{"fit/plate_in_jaw", "too_thick", func(d *facts.Document) { d.Fits[5].NeedsM = ptr(0.026) },
			"attachment A is <needs_m 0.026> thick; the jaw at K1's pin is <room_m 0.025> wide", "#/fit/5", 0.026},
		{"fit/plate_in_jaw", "loose", func(d *facts.Document) { d.Fits[5].FilledRatio = ptr(0.5) },
			"attachment A fills <filled_ratio 0.5> of the jaw at K1's pin; under <least_ratio 0.6> it slides to one ear unless spacers keep it in the middle", "#/fit/5", 0.5},
		{"fit/hook_in_hole", "", func(d *facts.Document) { d.Fits[6].NeedsM = ptr(0.026) },
			"hook H1 is <needs_m 0.026> thick at its bowl; the hole of attachment B is <room_m 0.025> wide", "#/fit/6", 0.026},
		{"fit/link_over_hook", "", func(d *facts.Document) { d.Fits[7].NeedsM = ptr(0.026) },
			"the crane hook is <needs_m 0.026> wide; ML1 is <room_m 0.025> wide inside", "#/fit/7", 0.026},
		{"fit/part_in_opening", "", func(d *facts.Document) { d.Fits[8].NeedsM = ptr(0.026) },
			"ML1 takes up <needs_m 0.026>; K9's bow is <room_m 0.025> wide", "#/fit/8", 0.026},
		{"fit/crowded", "", func(d *facts.Document) { d.Gathers[0].NeedsM = ptr(0.21) },
			"4 legs on K9's bow take <needs_m 0.21> side by side; there is room for <room_m 0.2>", "#/gather/0", 0.21},
		{"fit/legs_spread_in_bow", "", func(d *facts.Document) { d.Gathers[0].IncludedAngleDeg = ptr(125.0) },
			"legs spread by <included_angle_deg 125> in K9's bow; at most <most_deg 120> is allowed between two of them", "#/gather/0", 125},
		{"fit/legs_spread_in_dee", "", func(d *facts.Document) { d.Gathers[0].Pattern = ptr("dee") },
			"legs spread by <included_angle_deg 60> in K9's bow, and K9 is a dee shackle, made for one pull in line; over <most_deg 10> takes a bow shackle, or a link", "#/gather/0", 60},
		{"fit/web_eye_short", "far_too_short", func(d *facts.Document) { d.Bearings[0].EyeWidthTimes = ptr(1.5) },
			"the eye of W1 is <eye_length_m 0.3> long, <eye_length_over_body_times 1.5> the thickness of the crane hook, which is <body_width_m 0.08>; at least <error_times 2> keeps its stitching from being torn open: hang it on something thinner, or from a shackle", "#/bearing/0", 1.5},
		{"fit/web_eye_short", "short", func(d *facts.Document) { d.Bearings[0].EyeWidthTimes = ptr(2.5) },
			"the eye of W1 is <eye_length_m 0.3> long, <eye_length_over_body_times 2.5> the thickness of the crane hook, which is <body_width_m 0.08>; at least <warning_times 3.5> keeps its stitching from being torn open: hang it on something thinner, or from a shackle", "#/bearing/0", 2.5},
		{"fit/legs_on_pin", "", func(d *facts.Document) { d.Gathers[0].OnPin = ptr(true) },
			"<legs 4> legs hang on the pin of K9: turn it round, so that they hang in its bow", "#/gather/0", 0},
	}...)
}

func breaksHooks() []broken {
	return []broken{
		{"fit/legs_on_hook", "", func(d *facts.Document) { d.Hooks[0].LegsDirect = 4 },
			"<legs_direct 4> legs go over the hook itself; with more than <most 2> a link gathers them", "#/hook", 4},
		{"fit/hook_latch", "none", func(d *facts.Document) { d.HookUses[0].Latch = ptr("none") },
			"the crane hook has no latch: use one that closes by itself", "#/hook_use/0", 0},
		{"fit/hook_latch", "faulty", func(d *facts.Document) { d.HookUses[0].Latch = ptr("faulty") },
			"the latch of the crane hook is faulty: have it mended, or use another hook", "#/hook_use/0", 0},
		{"fit/hook_tip_loaded", "", func(d *facts.Document) { d.HookUses[0].WidestM = ptr(0.09) },
			"S1's upper eye is <widest_m 0.09> thick and does not pass the throat of the crane hook, which opens <throat_m 0.08>: it would hang on the tip", "#/hook_use/0", 0.09},
		{"fit/leg_off_hook_axis", "", func(d *facts.Document) { d.HookUses[0].OffAxisDeg = ptr(47.0) },
			"a leg hangs in the crane hook at <off_axis_deg 47> from its axis; at most <most_deg 45> is allowed without a link that gathers the legs", "#/hook_use/0", 47},
		{"fit/hook_of_wrong_kind", "grab", func(d *facts.Document) { d.HookUses[1].MadeFor = "grab" },
			"H1 is a grab hook, which takes nothing but a link of chain, and hangs in attachment B: use a sling hook with a latch, or a shackle", "#/hook_use/1", 0},
		{"fit/hook_of_wrong_kind", "open", func(d *facts.Document) { d.HookUses[1].MadeFor, d.HookUses[1].Latch = "j", ptr("none") },
			"H1 is made for other work, j, and hangs in attachment B with no latch that works: use a sling hook with a latch, or a shackle", "#/hook_use/1", 0},
		{"fit/hook_of_wrong_kind", "foundry", func(d *facts.Document) { d.HookUses[1].MadeFor, d.HookUses[1].Latch = "foundry", ptr("none") },
			"H1 is made for other work, foundry, and hangs in attachment B with no latch that works: use a sling hook with a latch, or a shackle", "#/hook_use/1", 0},
		{"fit/hook_points_inward", "", func(d *facts.Document) { d.HookUses[1].Points = ptr("inward") },
			"hook H1 points inward: turn it round, so that slack does not push it out", "#/hook_use/1", 0},
	}
}
