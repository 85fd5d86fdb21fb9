package policy_test

import "liftlint/internal/facts"

func breaksBend() []broken {
	return []broken{
		{"bend/eye_round_thin_body", "thinner_than_rope", func(d *facts.Document) { d.Fits[0].BendD = ptr(0.9) },
			"S1's upper eye bends round the crane hook, which is <bend_d 0.9> thick (d is the diameter of the rope); no eye is bent round less than <least_d 1>", "#/fit/0", 0.9},
		{"bend/eye_round_thin_body", "thin", func(d *facts.Document) { d.Fits[0].BendD = ptr(1.5) },
			"S1's upper eye bends round the crane hook, which is <bend_d 1.5> thick (d is the diameter of the rope); at least <advised_d 2> is advised for a soft eye", "#/fit/0", 1.5},
	}
}
