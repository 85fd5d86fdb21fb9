package policy_test

import "liftlint/internal/facts"

func breaksBend() []broken {
	return []broken{
		{"bend/eye_round_thin_body", "thinner_than_rope", func(d *facts.Document) { d.Fits[0].BendD = ptr(0.9) },
			"S1's upper eye bends round the crane hook, which is <bend_d 0.9> thick (d is the diameter of the rope); no eye is bent round less than <least_d 1>", "#/fit/0", 0.9},
		{"bend/eye_round_thin_body", "thin", func(d *facts.Document) { d.Fits[0].BendD = ptr(1.5) },
			"S1's upper eye bends round the crane hook, which is <bend_d 1.5> thick (d is the diameter of the rope); at least <advised_d 2> is advised for a soft eye", "#/fit/0", 1.5},
		{"bend/sling_round_thin_body", "", inHitch(chokeAlone, func(h *facts.Hitch) { h.BodyOverRopeRatio = ptr(0.9) }),
			"S1 is bent round pipe, whose thickness is <body_over_rope_ratio 0.9> of the diameter of its rope; no sling is bent round less than <least_ratio 1>", "#/hitch/0", 0.9},
		{"bend/edge_unprotected", "", inHitch(basketOnEdges, func(h *facts.Hitch) { h.BodyOverRopeRatio = ptr(1.5) }),
			"the bare edges of pipe bend S1 over <body_over_rope_ratio 1.5> of the diameter of its rope (twice their radius); under <sharp_ratio 2> an edge is sharp for it: put corner pieces between them", "#/hitch/4", 1.5},
	}
}
