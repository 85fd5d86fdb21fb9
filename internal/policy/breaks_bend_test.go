package policy_test

import "liftlint/internal/facts"

func breaksBend() []broken {
	return []broken{
		{"bend/fabric_on_thin_fitting", "pressed", func(d *facts.Document) { d.Bearings[0].PressurePa = ptr(60e6) },
			"W1 presses on the crane hook with <pressure_pa 6e+07>; at most <most_pa 4.83e+07> is allowed on webbing and round slings: take a fitting thicker than <body_width_m 0.08>, or a wider sling", "#/bearing/0", 60e6},
		{"bend/fabric_on_thin_fitting", "thin", func(d *facts.Document) { d.Bearings[0].BodyWidthM = ptr(0.006) },
			"the crane hook, on which W1 bears, is <body_width_m 0.006> thick, thinner than the sling, which is <thickness_m 0.007>: take a thicker fitting", "#/bearing/0", 0.006},
		{"bend/eye_round_thin_body", "thinner_than_rope", func(d *facts.Document) { d.Fits[0].BendD = ptr(0.9) },
			"S1's upper eye bends round the crane hook, which is <bend_d 0.9> thick (d is the diameter of the rope); no eye is bent round less than <least_d 1>", "#/fit/0", 0.9},
		{"bend/eye_round_thin_body", "thin", func(d *facts.Document) { d.Fits[0].BendD = ptr(1.5) },
			"S1's upper eye bends round the crane hook, which is <bend_d 1.5> thick (d is the diameter of the rope); at least <advised_d 2> is advised for a soft eye", "#/fit/0", 1.5},
		{"bend/sling_round_thin_body", "rope", inHitch(chokeAlone, func(h *facts.Hitch) { h.BodyOverRopeRatio = ptr(0.9) }),
			"S1, whose rope is <sling_size_m 0.02> thick, is bent round pipe of <bent_over_m 0.6>, <body_over_rope_ratio 0.9> of that; no sling is bent round less than <least_ratio 1>", "#/hitch/0", 0.9},
		{"bend/edge_unprotected", "rope", inHitch(basketOnEdges, func(h *facts.Hitch) { h.BodyOverRopeRatio = ptr(1.5) }),
			"the bare edges of pipe, <edge_radius_m 0.03> in radius, are sharp for S1, whose rope is <sling_size_m 0.02> thick: twice the radius is <body_over_rope_ratio 1.5> of that, and under <sharp_ratio 2> an edge cuts; put corner pieces between them", "#/hitch/4", 1.5},
		{"bend/edge_unprotected", "chain", inHitch(basketOnEdges, func(h *facts.Hitch) { h.SlingKind, h.BodyOverRopeRatio = "chain_sling", ptr(1.5) }),
			"the bare edges of pipe, <edge_radius_m 0.03> in radius, are sharp for S1, whose chain is of <sling_size_m 0.02>: twice the radius is <body_over_rope_ratio 1.5> of that, and under <sharp_ratio 2> an edge cuts; put corner pieces between them", "#/hitch/4", 1.5},
		{"bend/edge_unprotected", "fabric", inHitch(basketOnEdges, func(h *facts.Hitch) { h.SlingKind = "web_sling" }),
			"the bare edges of pipe, <edge_radius_m 0.03> in radius, are sharp for S1, which is <sling_size_m 0.02> thick: twice the radius is <body_over_rope_ratio 3> of that, and under <sharp_fabric_ratio 6> an edge cuts; put corner pieces between them", "#/hitch/4", 3},
		{"bend/edge_unprotected", "mesh", inHitch(basketOnEdges, func(h *facts.Hitch) { h.SlingKind, h.BodyOverRopeRatio = "mesh_sling", ptr(11.9) }),
			"the bare edges of pipe, <edge_radius_m 0.03> in radius, are sharp for S1, whose mesh is <sling_size_m 0.02> thick: twice the radius is <body_over_rope_ratio 11.9> of that, and under <sharp_mesh_ratio 12> an edge bends its wires sharply; put corner pieces between them", "#/hitch/4", 11.9},
		{"bend/sling_round_thin_body", "chain", inHitch(chokeAlone, func(h *facts.Hitch) { h.SlingKind, h.BodyOverRopeRatio = "chain_sling", ptr(1.5) }),
			"S1, whose chain is of <sling_size_m 0.02>, is bent round pipe of <bent_over_m 0.6>, <body_over_rope_ratio 1.5> of that; no chain is bent round less than <least_chain_ratio 2>", "#/hitch/0", 1.5},
		{"bend/sling_round_thin_body", "fabric", inHitch(chokeAlone, func(h *facts.Hitch) { h.SlingKind, h.BodyOverRopeRatio = "round_sling", ptr(5.0) }),
			"S1, which is <sling_size_m 0.02> thick, is bent round pipe of <bent_over_m 0.6>, <body_over_rope_ratio 5> of that; webbing and round slings are bent round no less than <least_fabric_ratio 6>", "#/hitch/0", 5},
		{"bend/softener_not_secured", "not_secured", inHitch(chokeSoftened, func(h *facts.Hitch) { h.SoftenerSecured = "no" }),
			"what softens the edges of pipe under S1 can fall or slip as the sling goes slack: tie it, or take pieces that stay where they are put", "#/hitch/softened", 0},
		{"bend/softener_not_secured", "not_given", inHitch(chokeSoftened, func(h *facts.Hitch) { h.SoftenerSecured = "not_given" }),
			"the plan does not say whether what softens the edges of pipe under S1 is kept from falling or slipping: add `softener_secured`", "#/hitch/softened", 0},
	}
}
