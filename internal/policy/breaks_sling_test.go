package policy_test

import "liftlint/internal/facts"

func breaksSling() []broken {
	rope := func(change func(*facts.Rope)) func(*facts.Document) {
		return func(d *facts.Document) { change(&d.Ropes[0]) }
	}
	return []broken{
		{"sling/turn_back_eye", "not_given", func(d *facts.Document) { d.Gear[0].EyeKinds = []string{"not_given"} },
			"nothing is said of how the eyes of S1 are made", "#/gear/0", 0},
		{"sling/turn_back_eye", "turn_back", func(d *facts.Document) { d.Gear[0].EyeKinds = []string{"turn_back_sleeve"} },
			"S1 has an eye that its sleeve alone holds; for overhead hoisting an eye of re-laid strands is advised", "#/gear/0", 0},
		{"sling/rope_not_described", "", rope(func(r *facts.Rope) { r.Described = []string{"class", "core", "grade"} }),
			"of the rope of S1 is not given: construction, finish, lay", "#/rope/0", 0},
		{"sling/faults_seen", "", func(d *facts.Document) {
			d.Gear[0].FaultsSeen, d.Gear[0].SeenOn.At = []string{"kink", "heat"}, "#/gear/0/faults_seen"
		},
			"S1 is out of service for what is seen on it: kink, heat", "#/gear/0/faults_seen", 0},
		{"sling/chain_grade", "not_for_lifting", func(d *facts.Document) { d.Gear[chainSling].ChainGrade = "70" },
			"the chain of C1 is of grade 70, which is not made for overhead lifting: take one of grade 80 or higher", "#/gear/6", 0},
		{"sling/chain_grade", "not_given", func(d *facts.Document) { d.Gear[chainSling].ChainGrade = "not_given" },
			"the grade of the chain of C1 is not given; for lifting it has to be of grade 80 or higher: read it off the links or the tag", "#/gear/6", 0},
		{"sling/component_and_body_disagree", "disagree", func(d *facts.Document) { d.Ropes[braid].BodyAgrees = ptr("no") },
			"M1 can't be <diameter_m 0.02> thick with rope of <component_diameter_m 0.0065> in as many parts: measure both", "#/rope/4", 0},
		{"sling/component_and_body_disagree", "cable_laid", func(d *facts.Document) { d.Ropes[braid].Body, d.Ropes[braid].BodyAgrees = "cable_laid", ptr("no") },
			"M1 can't be <diameter_m 0.02> thick, cable-laid of rope of <component_diameter_m 0.0065>: six ropes round one are three ropes thick; measure both", "#/rope/4", 0},
		{"sling/component_and_body_disagree", "not_known", func(d *facts.Document) { d.Ropes[braid].BodyAgrees = ptr("lay_up_not_known") },
			"no lay-up of so many parts is known here: see that <diameter_m 0.02> of body and <component_diameter_m 0.0065> of rope go together in M1", "#/rope/4", 0},
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
			"S1 has <clear_rope_d 9> of plain rope between its splices or sleeves (d is the diameter of the rope); at least <least_clear_rope_d 20> is asked for", "#/rope/0", 9},
		{"sling/body_too_short", "too_short_multi_part", rope(func(r *facts.Rope) { r.Body, r.BodyAgrees, r.ClearRopeD = "multi_part", ptr("yes"), ptr(9.0) }),
			"S1 has <clear_rope_d 9> of plain body between its splices or sleeves (d is the diameter of the finished body); for the rope it is made of, at least <least_clear_rope_d 20> is asked for", "#/rope/0", 9},
		{"sling/temperature", "fiber_core", rope(func(r *facts.Rope) { r.Core, r.HighestC = "fiber", ptr(90.0) }),
			"S1, whose core is or may be of fiber, gets as hot as <highest_c 90>; with a fiber core <fiber_most_c 82> is the most", "#/rope/0", 90},
		{"sling/temperature", "aluminum_sleeve", rope(func(r *facts.Rope) { r.Sleeves, r.HighestC = []string{"aluminum"}, ptr(160.0) }),
			"S1, whose sleeves are or may be of aluminum, gets as hot as <highest_c 160>; with aluminum sleeves <aluminum_most_c 150> is the most", "#/rope/0", 160},
		{"sling/temperature", "hot", rope(func(r *facts.Rope) { r.HighestC = ptr(210.0) }),
			"S1 gets as hot as <highest_c 210>; beyond <steel_most_c 204> its maker has to say what it may still carry", "#/rope/0", 210},
		{"sling/temperature", "cold", rope(func(r *facts.Rope) { r.LowestC = ptr(-45.0) }),
			"S1 gets as cold as <lowest_c -45>; under <least_c -40> its maker has to say whether it may be used", "#/rope/0", -45},
		{"sling/temperature_beyond_rating", "grommet_hot", ofKind("grommet", -5, 210),
			"C1 gets as hot as <highest_c 210>; beyond <rope_most_c 204> its maker has to say what it may still carry", "#/gear/6", 210},
		{"sling/temperature_beyond_rating", "chain_hot", ofKind("chain_sling", -5, 600),
			"C1 gets as hot as <highest_c 600>; beyond <chain_most_c 538> its maker has to say what it may still carry", "#/gear/6", 600},
		{"sling/temperature_beyond_rating", "fabric_hot", ofMake("web_sling", 90, func(g *facts.Gear) { g.Fabric = "nylon" }),
			"C1 gets as hot as <highest_c 90>; webbing and round slings are used up to <fabric_most_c 82>: take chain or wire rope there", "#/gear/6", 90},
		{"sling/temperature_beyond_rating", "polypropylene_hot", ofMake("web_sling", 95, func(g *facts.Gear) { g.Fabric = "polypropylene" }),
			"C1, which is or may be of polypropylene, gets as hot as <highest_c 95>; polypropylene is used up to <polypropylene_most_c 90>: take chain or wire rope there", "#/gear/6", 95},
		{"sling/temperature_beyond_rating", "hmpe_hot", ofMake("round_sling", 70, func(g *facts.Gear) { g.Fabric = "hmpe" }),
			"C1, which is or may be of high-modulus polyethylene, gets as hot as <highest_c 70>; such yarns are used up to <hmpe_most_c 60>", "#/gear/6", 70},
		{"sling/temperature_beyond_rating", "grommet_core", ofMake("grommet", 90, func(g *facts.Gear) { g.GrommetCore = "not_given" }),
			"C1, whose core is or may be of fiber, gets as hot as <highest_c 90>; with a fiber core <core_most_c 82> is the most", "#/gear/6", 90},
		{"sling/temperature_beyond_rating", "grommet_sleeve", ofMake("grommet", 160, func(g *facts.Gear) { g.GrommetSleeve = "aluminum" }),
			"C1, whose sleeve is or may be of aluminum, gets as hot as <highest_c 160>; with an aluminum sleeve <sleeve_most_c 150> is the most", "#/gear/6", 160},
		{"sling/temperature_beyond_rating", "mesh_hot", ofMesh("not_given", -5, 100),
			"C1, whose mesh is or may be coated, gets as hot as <highest_c 100>; with a coating <mesh_most_c 93> is the most", "#/gear/6", 100},
		{"sling/temperature_beyond_rating", "bare_hot", ofMesh("bare", -5, 300),
			"C1 gets as hot as <highest_c 300>; beyond <bare_most_c 288> its maker has to say what it may still carry", "#/gear/6", 300},
		{"sling/temperature_beyond_rating", "mesh_cold", ofMesh("coated", -20, 20),
			"C1, whose mesh is or may be coated, gets as cold as <lowest_c -20>; with a coating <mesh_least_c -17> is the least", "#/gear/6", -20},
		{"sling/temperature_beyond_rating", "bare_cold", ofMesh("bare", -30, 20),
			"C1 gets as cold as <lowest_c -30>; under <bare_least_c -28> its maker has to say whether it may be used", "#/gear/6", -30},
		{"sling/temperature_beyond_rating", "cold", ofKind("chain_sling", -45, 20),
			"C1 gets as cold as <lowest_c -45>; under <least_c -40> its maker has to say whether it may be used", "#/gear/6", -45},
		{"sling/legs_unlike", "", func(d *facts.Document) {
			d.Lifts[0].LegsUnlike = facts.Unlike{At: "#/gear/1", How: "S1 and S2 are unlike in diameter"}
		},
			"S1 and S2 are unlike in diameter: use a matched set, or see that each leg's share holds for it", "#/gear/1", 0},
		{"sling/lays_joined", "", func(d *facts.Document) { d.Legs[0].LaysJoined = ptr("unlike") },
			"in leg hook/1 a right-lay and a left-lay sling follow each other: use slings of one lay", "#/leg/0", 0},
	}
}

// ofKind makes a sling of another kind of the chain, as cold and as hot as given.
func ofMake(kind string, highestC float64, make func(*facts.Gear)) func(*facts.Document) {
	return func(d *facts.Document) {
		ofKind(kind, -5, highestC)(d)
		make(&d.Gear[chainSling])
	}
}

func ofMesh(mesh string, lowestC, highestC float64) func(*facts.Document) {
	return func(d *facts.Document) {
		ofKind("mesh_sling", lowestC, highestC)(d)
		d.Gear[chainSling].Mesh = mesh
	}
}

func ofKind(kind string, lowestC, highestC float64) func(*facts.Document) {
	return func(d *facts.Document) {
		g := &d.Gear[chainSling]
		g.Kind, g.LowestC, g.HighestC = kind, &lowestC, &highestC
	}
}
