package policy_test

import "liftlint/internal/facts"

// inHitch changes one of the hitches of a level lift.
func inHitch(i int, change func(*facts.Hitch)) func(*facts.Document) {
	return func(d *facts.Document) { change(&d.Hitches[i]) }
}

func breaksHitch() []broken {
	return append(breaksChoke(), append(append(breaksChokers(), breaksBasket()...), breaksRatedHitch()...)...)
}

func breaksChoke() []broken {
	return []broken{
		{"hitch/swivel_in_line", "load_bearing", func(d *facts.Document) { d.Legs[0].SwivelInLine = "load_bearing" },
			"the swivel in leg hook/1 turns under load and lets its rope unlay: take it out, or one that only takes its place", "#/leg/0", 0},
		{"hitch/swivel_in_line", "not_given", func(d *facts.Document) { d.Legs[0].SwivelInLine = "not_given" },
			"the plan does not say whether the swivel in leg hook/1 turns under load, which would unlay its rope: add `turns_under_load`", "#/leg/0", 0},
		{"hitch/choke_angle_wide", "", inHitch(chokeAlone, func(h *facts.Hitch) { h.ChokeAngleDeg = ptr(140.0) }),
			"the choke angle of S1 on pipe, between standing part and loop, is <choke_angle_deg 140>; over <most_deg 135> the choke does not grip", "#/hitch/0", 140},
		{"hitch/choke_angle_not_given", "", inHitch(chokeOfTwo, func(h *facts.Hitch) { h.LeanDeg = ptr(20.0) }),
			"S1 is choked on pipe and leans <lean_along_body_deg 20> along it, which is more than <plumb_deg 5>, and the plan does not say how the choke is set: <choke_angle_deg 134> between standing part and loop is taken", "#/hitch/1", 20},
		{"hitch/choke_on_eye_or_splice", "flat_end", inHitch(chokeAlone, func(h *facts.Hitch) { h.ChokeLands, h.SlingKind = ptr("on_eye_or_splice"), "web_sling" }),
			"an end of S1, its stitching or handle included, lies in its choke on pipe: take a longer sling, one with shorter ends, or a basket", "#/hitch/0", 0},
		{"hitch/choke_on_eye_or_splice", "body_thin", inHitch(chokeAlone, func(h *facts.Hitch) { h.ChokeLands, h.PerimeterD = ptr("on_eye_or_splice"), ptr(15.0) }),
			"pipe is thin for S1, <perimeter_d 15> round (d is the diameter of the rope), and the choke lands on eye or splice; under <thin_d 22> take another turn round it, a thinner sling, or a basket", "#/hitch/0", 15},
		{"hitch/choke_on_eye_or_splice", "eye_long", inHitch(chokeAlone, func(h *facts.Hitch) { h.ChokeLands = ptr("on_eye_or_splice") }),
			"the choke of S1 on pipe lands on its own eye or splice: take a sling with a shorter eye, another turn round pipe, or a basket", "#/hitch/0", 0},
		{"hitch/construction_for_bend", "stiff", inHitch(chokeAlone, func(h *facts.Hitch) { h.RopeClass, h.BodyOverRopeRatio = "6x19", ptr(8.0) }),
			"S1 is of rope of class 6x19, of few and thick wires, and is bent round pipe, <body_over_rope_ratio 8> times as thick as its rope; under <least_ratio 10> a class of many, thin wires such as 6x36 lies down better and lasts longer", "#/hitch/0", 8},
		{"hitch/construction_for_bend", "fiber_core", inHitch(chokeAlone, func(h *facts.Hitch) { h.RopeCore, h.BodyOverRopeRatio = "fiber", ptr(8.0) }),
			"S1 has a fiber core and is bent round pipe, <body_over_rope_ratio 8> times as thick as its rope; under <least_ratio 10> the core is crushed: an independent wire rope core holds its strands better", "#/hitch/0", 8},
		{"hitch/choke_pin_on_running_part", "on_running_part", inHitch(chokeAlone, func(h *facts.Hitch) { h.PinIn = "running_part" }),
			"the pin of the shackle that closes the choke of S1 on pipe bears on the running part, which can unscrew it: turn the shackle round, with its pin in the eye", "#/hitch/0", 0},
		{"hitch/choke_pin_on_running_part", "not_given", inHitch(chokeAlone, func(h *facts.Hitch) { h.PinIn = "not_given" }),
			"the plan does not say how the shackle that closes the choke of S1 on pipe is turned: its pin goes through the eye, not round the running part; add `pin_in`", "#/hitch/0", 0},
		{"hitch/choker_can_slide", "along", inHitch(chokeAlone, func(h *facts.Hitch) { h.LeanDeg = ptr(88.0) }),
			"S1 is the only leg and pulls along pipe, leaning <lean_along_body_deg 88> from straight across it; over <along_deg 60> the choke hardly grips whatever the surface: put it under a stop or take a second leg, and say so", "#/hitch/0", 88},
		{"hitch/choker_can_slide", "slippery", inHitch(chokeAlone, func(h *facts.Hitch) { h.Surface = "wet_or_oily" }),
			"S1 is the only leg, choked on pipe, whose surface is slippery (wet_or_oily), and nothing that the plan names keeps it from sliding along it: put it under a stop or take a second leg, and say so", "#/hitch/0", 0},
		{"hitch/choker_can_slide", "smooth", inHitch(chokeAlone, func(h *facts.Hitch) { h.Surface = "dry_steel" }),
			"S1 is the only leg, choked on pipe, whose surface is smooth (dry_steel), and the plan does not say what keeps it from sliding along it", "#/hitch/0", 0},
		{"hitch/choker_can_slide", "long", inHitch(chokeAlone, func(h *facts.Hitch) { h.BodyLengthM = ptr(4.0) }),
			"S1 is the only leg, choked on pipe, which is <body_length_m 4> long; over <long_m 3.6576> two legs hold it, or the plan says what keeps the choke from sliding", "#/hitch/0", 4},
		{"hitch/choker_can_slide", "surface_not_given", inHitch(chokeAlone, func(h *facts.Hitch) { h.Surface = "not_given" }),
			"S1 is the only leg, choked on pipe, and the plan says neither what its surface is nor what keeps the choke from sliding along it", "#/hitch/0", 0},
		{"hitch/single_leg_can_turn", "hand_tucked", func(d *facts.Document) { d.Legs[0].TurningHeld, d.Legs[0].HandTucked = false, true },
			"leg hook/1 is the only one and has hand-tucked splices, which come undone if it turns, and the plan does not say what keeps the load from turning: add `turning_held_by`", "#/leg/0", 0},
		{"hitch/single_leg_can_turn", "free", func(d *facts.Document) { d.Legs[0].TurningHeld = false },
			"leg hook/1 is the only one, and the plan does not say what keeps the load from turning: add `turning_held_by`", "#/leg/0", 0},
		{"hitch/doubled_parts_equal", "", func(d *facts.Document) { d.Legs[0].Doubled, d.Legs[0].PartsTakenEqual = true, true },
			"the sling of leg hook/1 is laid double and its parts are taken to carry alike; friction in the bends puts more into some of them", "#/leg/0", 0},
	}
}

// breaksChokers have two chokers on one body, of which the second leans.
func breaksChokers() []broken {
	leans := func(surface string, deg float64) func(*facts.Document) {
		return inHitch(chokeOfTwo, func(h *facts.Hitch) { h.Surface, h.LeanDeg, h.ChokeAngleGiven = surface, ptr(deg), true })
	}
	return []broken{
		{"hitch/chokers_slide_along", "along", leans("wood", 70),
			"S1 pulls along pipe, leaning <lean_along_body_deg 70> from straight across it; over <along_deg 60> the choke hardly grips whatever the surface: put it under a stop, and say so", "#/hitch/1", 70},
		{"hitch/chokers_slide_along", "wet", leans("wet_or_oily", 4),
			"S1, choked on pipe, which is wet or oily, leans <lean_along_body_deg 4> along it; over <wet_deg 2.9> it slides: hang it plumb, or hold it by a stop, and say so", "#/hitch/1", 4},
		{"hitch/chokers_slide_along", "wet_turned", func(d *facts.Document) {
			leans("wet_or_oily", 10)(d)
			d.Hitches[1].Turns = 2
		},
			"S1, choked on pipe, which is wet or oily, leans <lean_along_body_deg 10> along it; over <wet_turned_deg 5.7> a second turn holds it no more: hang it plumb, or hold it by a stop, and say so", "#/hitch/1", 10},
		{"hitch/chokers_slide_along", "on_steel", leans("dry_steel", 12),
			"S1, choked on pipe, leans <lean_along_body_deg 12> along it; over <steel_deg 8.5> its surface (dry_steel) does not hold it: hang it plumb, give it a second turn, or hold it by a stop, and say so", "#/hitch/1", 12},
		{"hitch/chokers_slide_along", "on_wood", leans("wood", 20),
			"S1, choked on pipe, leans <lean_along_body_deg 20> along it; over <wood_deg 16.7> its surface (wood) does not hold it: hang it plumb, give it a second turn, or hold it by a stop, and say so", "#/hitch/1", 20},
	}
}

func breaksBasket() []broken {
	slides := func(surface string) func(*facts.Document) {
		return inHitch(basketLevel, func(h *facts.Hitch) { h.Surface, h.LeanDeg, h.FrictionNeededRatio = surface, ptr(13.0), ptr(1.5) })
	}
	return []broken{
		{"hitch/splice_on_body", "", inHitch(basketLevel, func(h *facts.Hitch) { h.SpliceLies = ptr("on_body") }),
			"in the basket of S1 an eye or end, with its splice or stitching, reaches on to pipe: take a longer sling, or one with shorter ends", "#/hitch/2", 0},
		{"hitch/basket_slides_round", "", inHitch(basketLevel, func(h *facts.Hitch) { h.ForceRatio, h.SlipsRatio = ptr(1.92), ptr(1.2) }),
			"one run of S1 round pipe pulls <force_ratio 1.92> of the other, which is <slips_ratio 1.2> of what friction holds (dry_steel); over <most_ratio 1> the sling slides round it: let both runs pull alike, or choke it", "#/hitch/2", 1.2},
		{"hitch/basket_slides_along", "wet", slides("wet_or_oily"),
			"S1 leans <lean_along_body_deg 13> along pipe, which is wet or oily, and needs <friction_needed_over_given_ratio 1.5> of the friction that gives; over <most_ratio 1> it slides: hang it plumb or hold it by a stop, and say so", "#/hitch/2", 1.5},
		{"hitch/basket_slides_along", "slides", slides("dry_steel"),
			"S1 leans <lean_along_body_deg 13> along pipe and needs <friction_needed_over_given_ratio 1.5> of the friction that its surface gives (dry_steel); over <most_ratio 1> it slides: hang it plumb or hold it by a stop, and say so", "#/hitch/2", 1.5},
		{"hitch/basket_on_tilted_load", "", inHitch(basketTilted, func(h *facts.Hitch) { h.HeldAgainstSliding = false }),
			"S1 lies in a basket round pipe, which is meant to be tilted, and the plan does not say what keeps it from sliding along it: put it against a stop, or choke it", "#/hitch/3", 0},
	}
}

// inPart changes how the first part is used and how much.
func inPart(kind, hitch string, used, ratedN float64) func(*facts.Document) {
	return func(d *facts.Document) {
		p := &d.Parts[0]
		p.Kind, p.Hitch, p.UsedRatio, p.RatedLoadN = kind, hitch, ptr(used), ptr(ratedN)
	}
}

func breaksRatedHitch() []broken {
	const over = "load/over_rated_load"
	return []broken{
		{over, "over_choked", inPart("wire_rope_sling", "choke", 1.1, 43500),
			"S1 in leg hook/1 has a design force of <load_n 30000> (own_force), <used_ratio 1.1> of what it may carry in a choker hitch, <rated_load_n 43500>; at most <over_ratio 1> is allowed. Its choker rating is <marked_load_n 50000>, less what the angle of the choke takes", "#/part/0", 1.1},
		{over, "over_in_basket", inPart("grommet", "basket", 1.1, 25000),
			"each run of the basket of S1 in leg hook/1 has a design force of <load_n 30000> (own_force), <used_ratio 1.1> of what it may carry, <rated_load_n 25000>; at most <over_ratio 1> is allowed. Its basket rating is <marked_load_n 50000> for both runs, less what the bend takes", "#/part/0", 1.1},
		{over, "over_on_sheave", inPart("wire_rope_sling", "over_sheave", 1.1, 45000),
			"each run of S1 over the sheave in leg hook/1 has a design force of <load_n 30000> (own_force), <used_ratio 1.1> of what it may carry, <rated_load_n 45000>; at most <over_ratio 1> is allowed. Its rating for a straight pull is <marked_load_n 50000>, less what the bend takes", "#/part/0", 1.1},
		{over, "over_doubled", inPart("grommet", "straight", 1.1, 90000),
			"S1, laid double in leg hook/1, has a design force of <load_n 30000> (own_force), <used_ratio 1.1> of what it may carry so, <rated_load_n 90000>; at most <over_ratio 1> is allowed. Not doubled it is rated for <marked_load_n 50000>", "#/part/0", 1.1},
		{over, "near_in_hitch", inPart("wire_rope_sling", "basket", 0.95, 25000),
			"S1 in leg hook/1 has a design force of <load_n 30000> (own_force), <used_ratio 0.95> of what it may carry in its hitch, <rated_load_n 25000>; over <near_ratio 0.9> leaves little for what is not known", "#/part/0", 0.95},
	}
}
