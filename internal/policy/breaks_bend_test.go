package policy_test

import "liftlint/internal/facts"

func breaksBend() []broken {
	return []broken{
		{"bend/eye_round_thin_body", "thinner_than_rope", func(d *facts.Document) { d.Fits[0].BendRatio = ptr(0.9) },
			"S1's upper eye bends round the crane hook, which is <bend_ratio 0.9> as thick as the rope; under <least_ratio 1> no eye is bent", "#/fit/0", 0.9},
		{"bend/eye_round_thin_body", "thin", func(d *facts.Document) { d.Fits[0].BendRatio = ptr(1.5) },
			"S1's upper eye bends round the crane hook, which is <bend_ratio 1.5> as thick as the rope; <advised_ratio 2> is advised for a soft eye", "#/fit/0", 1.5},
	}
}
