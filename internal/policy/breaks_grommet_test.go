package policy_test

import "liftlint/internal/facts"

func breaksGrommet() []broken {
	grommet := func(change func(*facts.Grommet)) func(*facts.Document) {
		return func(d *facts.Document) { change(&d.Grommets[0]) }
	}
	return []broken{
		{"grommet/breaking_load_too_high", "far_over", func(d *facts.Document) { d.Gear[0].BreakingRatio = ptr(3.0) },
			"the breaking load of S1 is <breaking_over_strongest_ratio 3> of what the strongest rope as thick as its body holds; at most <error_ratio 1.25> is believable: read it, the number of parts that it is for and the diameter of the body off the certificate again", "#/gear/0", 3},
		{"grommet/breaking_load_too_high", "over", func(d *facts.Document) { d.Gear[0].BreakingRatio = ptr(1.1) },
			"the breaking load of S1 is <breaking_over_strongest_ratio 1.1> of what the strongest rope as thick as its body holds; at most <warning_ratio 1.05> is believable: read it, the number of parts that it is for and the diameter of the body off the certificate again", "#/gear/0", 1.1},
		{"grommet/component_and_body_disagree", "", grommet(func(g *facts.Grommet) { g.Laid, g.BodyAgrees = "cable_laid", ptr("no") }),
			"G1 can't be <diameter_m 0.02> thick, cable-laid of rope of <component_diameter_m 0.0065>: six ropes round one are three ropes thick; measure both", "#/grommet/0", 0},
		{"grommet/circumference_short", "", grommet(func(g *facts.Grommet) { g.CircumferenceD = ptr(90.0) }),
			"G1 is <circumference_d 90> once round (d is the diameter of its body); at least <least_d 96> is asked for", "#/grommet/0", 90},
		{"grommet/splice_at_bearing", "", grommet(func(g *facts.Grommet) { g.SpliceFromD = ptr(3.0) }),
			"the splice of G1 lies <splice_from_bearing_d 3> from the middle of a bearing (d is the diameter of its body); at least <least_d 8> keeps it in the straight part: turn the grommet on", "#/grommet/0", 3},
		{"grommet/splice_not_given", "", grommet(func(g *facts.Grommet) { g.SpliceGiven, g.SpliceFromD = false, nil }),
			"the plan does not say where the splice of G1 is, which has to be clear of hooks, pins and bends: add `splice_at`", "#/grommet/0", 0},
		{"grommet/bent_too_sharply_above", "", grommet(func(g *facts.Grommet) { g.UpperBendD = ptr(0.9) }),
			"G1 bends round the crane hook at <upper_bend_d 0.9> (d is the diameter of its body); no grommet is bent round less than <least_d 1>", "#/grommet/0", 0.9},
		{"grommet/bent_too_sharply_below", "", grommet(func(g *facts.Grommet) { g.LowerBendD = ptr(0.9) }),
			"G1 bends round K1's bow at <lower_bend_d 0.9> (d is the diameter of its body); no grommet is bent round less than <least_d 1>", "#/grommet/0", 0.9},
	}
}
