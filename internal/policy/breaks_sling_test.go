package policy_test

import "liftlint/internal/facts"

func breaksSling() []broken {
	rope := func(change func(*facts.Rope)) func(*facts.Document) {
		return func(d *facts.Document) { change(&d.Ropes[0]) }
	}
	return []broken{
		{"sling/turn_back_eye", "not_given", func(d *facts.Document) { d.Gear[0].EyeKinds = []string{"not_given"} },
			"the plan does not say how the eyes of S1 are made", "#/gear/0", 0},
		{"sling/turn_back_eye", "turn_back", func(d *facts.Document) { d.Gear[0].EyeKinds = []string{"turn_back_sleeve"} },
			"S1 has an eye that its sleeve alone holds; for overhead hoisting an eye of re-laid strands is advised", "#/gear/0", 0},
		{"sling/rope_not_described", "", rope(func(r *facts.Rope) { r.Described = []string{"class", "core", "grade"} }),
			"of the rope of S1 the plan does not give: construction, finish, lay", "#/rope/0", 0},
		{"sling/faults_seen", "", rope(func(r *facts.Rope) { r.FaultsSeen = []string{"kink", "heat"} }),
			"S1 is out of service for what is seen on it: kink, heat", "#/rope/0", 0},
		{"sling/eye_not_allowed", "clipped", rope(func(r *facts.Rope) { r.EyeKinds = []string{"clipped"} }),
			"an eye of S1 is held by clips, which are not for making slings: use one with spliced or pressed eyes", "#/rope/0", 0},
		{"sling/eye_not_allowed", "knotted", rope(func(r *facts.Rope) { r.EyeKinds = []string{"knotted"} }),
			"an eye of S1 is tied in a knot: it is not used as a sling", "#/rope/0", 0},
		{"sling/rotation_resistant_or_lang", "rotation_resistant", rope(func(r *facts.Rope) { r.RotationResistant = true }),
			"S1 is of rotation-resistant rope, which is not used for slings", "#/rope/0", 0},
		{"sling/rotation_resistant_or_lang", "lang_lay", rope(func(r *facts.Rope) { r.LangLay = true }),
			"S1 is of lang-lay rope, which unlays where an end can turn: use a sling of regular lay", "#/rope/0", 0},
		{"sling/rope_too_thin", "", rope(func(r *facts.Rope) { r.DiameterM = ptr(0.005) }),
			"the rope of S1 is <diameter_m 0.005> thick; slings are made of rope of <least_m 0.006> and more", "#/rope/0", 0.005},
		{"sling/body_too_short", "too_short", rope(func(r *facts.Rope) { r.ClearRopeD = ptr(9.0) }),
			"S1 has <clear_rope_d 9> of plain rope between its splices or sleeves (d is the diameter of the rope); at least <least_d 10> is asked for", "#/rope/0", 9},
		{"sling/body_too_short", "too_short_tucked", rope(func(r *facts.Rope) { r.TuckedSplices, r.ClearRopeD = true, ptr(9.0) }),
			"S1 has <clear_rope_d 9> of plain rope between its splices or sleeves (d is the diameter of the rope); at least <least_tucked_d 10> is asked for", "#/rope/0", 9},
		{"sling/temperature", "fiber_core", rope(func(r *facts.Rope) { r.Core, r.HighestC = "fiber", ptr(90.0) }),
			"S1, whose core is or may be of fiber, gets as hot as <highest_c 90>; with a fiber core <fiber_most_c 82> is the most", "#/rope/0", 90},
		{"sling/temperature", "hot", rope(func(r *facts.Rope) { r.Sleeves, r.HighestC = []string{"aluminum"}, ptr(210.0) }),
			"S1 gets as hot as <highest_c 210>; slings like it are used up to <steel_most_c 204>", "#/rope/0", 210},
		{"sling/temperature", "hot_with_steel_sleeves", rope(func(r *facts.Rope) { r.HighestC = ptr(210.0) }),
			"S1 gets as hot as <highest_c 210>; beyond <steel_most_c 204> it carries less, and its maker has to say how much: no rated load is lowered for it here", "#/rope/0", 210},
		{"sling/temperature", "cold", rope(func(r *facts.Rope) { r.LowestC = ptr(-45.0) }),
			"S1 gets as cold as <lowest_c -45>; under <least_c -40> its maker has to say whether it may be used", "#/rope/0", -45},
		{"sling/legs_unlike", "", func(d *facts.Document) { d.Lifts[0].RopesUnlike = true },
			"the slings of the legs are of different rope, unlike in diameter, class or core: use a matched set, or see that each leg's share holds for it", "#/lift", 0},
		{"sling/lays_joined", "", func(d *facts.Document) { d.Legs[0].LaysJoined = ptr("unlike") },
			"in leg hook/1 a right-lay and a left-lay sling follow each other: use slings of one lay", "#/leg/0", 0},
	}
}
