package policy_test

import "liftlint/internal/facts"

func breaksBeam() []broken {
	return []broken{
		{"beam/span_over_rated", "", func(d *facts.Document) { d.Beams[0].SpanRatio = ptr(1.1) },
			"the outermost points of SB1 are <span_m 2> apart, <span_over_rated_ratio 1.1> of the span that its rated load is for; at most <most_ratio 1.001> is allowed", "#/beam/0", 1.1},
		{"beam/category_missing", "", func(d *facts.Document) { d.Beams[0].CategoryGiven = false },
			"the plan does not give the category of SB1 as marked on it: add `category`", "#/beam/0", 0},
		{"beam/proof_test_missing", "beam", func(d *facts.Document) { d.Beams[0].ProofTestGiven = false },
			"the plan tells of no proof test of SB1: it is tested with more than its rated load before it is first used; add `proof_test`", "#/beam/0", 0},
		{"beam/proof_test_missing", "device", func(d *facts.Document) { d.Beams[0].Kind, d.Beams[0].ProofTestGiven = "lifting_device", false },
			"the plan tells of no proof test of SB1: it is tested with more than its rated load before it is first used; add `proof_test`", "#/beam/0", 0},
		{"beam/proof_test_low", "after_lift", func(d *facts.Document) {
			d.Beams[0].ProofTestAfter, d.Beams[0].ProofTestDate = ptr(true), ptr("2027-03-01")
		},
			"SB1 is proof-tested on 2027-03-01, after the day of the lift: until then nothing shows that it holds; read the day again, or lift after the test", "#/beam/0", 0},
		{"beam/proof_test_low", "low", func(d *facts.Document) { d.Beams[0].ProofTestRatio = ptr(1.1) },
			"SB1 was proof-tested with <proof_test_ratio 1.1> of its rated load; at least <least_ratio 1.25> is asked for", "#/beam/0", 1.1},
		{"beam/proof_test_low", "high", func(d *facts.Document) { d.Beams[0].ProofTestRatio = ptr(2.0) },
			"SB1 was proof-tested with <proof_test_ratio 2> of its rated load; over <most_ratio 1.25> its maker or a qualified person says that it took no harm", "#/beam/0", 2},
		{"beam/proof_test_low", "not_dated", func(d *facts.Document) { d.Beams[0].ProofTestDated = false },
			"the plan does not give the day of the proof test of SB1: add `date` to it", "#/beam/0", 0},
		{"beam/bending_not_given", "", func(d *facts.Document) { d.Beams[liftingBeam].BendingRated = false },
			"the bending moment in LB1 is <bending_nm 1500>, and the plan does not say what it is rated for: give `rated_bending_moment`", "#/beam/1", 1500},
		{"beam/compression_over_rated", "", func(d *facts.Document) { d.Beams[0].CompressionRatio = ptr(1.2) },
			"the compression in SB1 is <compression_n 9000>, <compression_over_rated_ratio 1.2> of what it is rated for; at most <most_ratio 1> is allowed: longer legs above it lower that", "#/beam/0", 1.2},
		{"beam/bending_over_rated", "", func(d *facts.Document) { d.Beams[0].BendingRatio = ptr(1.2) },
			"the bending moment in SB1 is <bending_nm 1500>, <bending_over_rated_ratio 1.2> of what it is rated for; at most <most_ratio 1> is allowed", "#/beam/0", 1.2},
		{"beam/top_legs_too_flat", "", func(d *facts.Document) { d.Beams[0].TopAngleDeg = ptr(40.0) },
			"the flattest leg above SB1 hangs at <top_angle_from_horizontal_deg 40> from horizontal, and its rating holds down to <least_top_angle_from_horizontal_deg 45>: take longer legs above it", "#/beam/0", 40},
		{"beam/tilts", "", func(d *facts.Document) { d.Beams[0].TiltDeg = ptr(4.0) },
			"SB1 hangs <tilt_deg 4> out of level; at most <most_deg 2> is taken as level: even out the legs above it, or move its points over the center of gravity", "#/beam/0", 4},
		{"beam/top_angle_not_given", "", func(d *facts.Document) { d.Beams[0].LeastTopAngleGiven, d.Beams[0].CompressionRated = false, false },
			"legs at <top_angle_from_horizontal_deg 60> from horizontal put <compression_n 9000> of compression into SB1, and the plan does not say that it is rated for that, as it has to for legs flatter than <plumb_deg 85>: give `least_top_angle_from_horizontal` or `rated_compression`", "#/beam/0", 60},
	}
}
