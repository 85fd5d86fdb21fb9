package policy_test

import "liftlint/internal/facts"

func breaksInspection() []broken {
	return append(breaksSigns(), []broken{
		{"inspection/overdue", "", func(d *facts.Document) { d.Gear[0].Inspection.OverdueDays = ptr(12.0) },
			"S1 is <inspection.overdue_days 12> past its periodic inspection, due on <inspection.due 2027-05-04>", "#/gear/0/inspection", 12},
		{"inspection/not_looked_over", "", func(d *facts.Document) {
			d.Lifts[0].NotLookedOver = facts.OfGear{At: "#/gear/1", IDs: []string{"S2", "K1"}}
		},
			"nothing says what is seen on S2, K1 on the day: look over all of it before the lift and write down `faults_seen`, [] where nothing is seen, or in a register the look `before_use` with who made it", "#/gear/1", 0},
		{"inspection/due_soon", "", func(d *facts.Document) { d.Gear[0].Inspection.OverdueDays = ptr(-30.0) },
			"the periodic inspection of S1 holds on the day and is due on <inspection.due 2027-05-04>, within <soon_days 30> of it", "#/gear/0/inspection", 0},
		{"inspection/found_unfit", "", func(d *facts.Document) { d.OnFile[0].Failed = unfit("before_use", "look before use") },
			"S1 was found unfit by the look before use of 2026-12-03, and nobody who is named has found it fit since in one that goes as far: use another", "loft.gear.yaml#/items/0/inspections/1", 0},
		{"inspection/record_incomplete", "shows_nothing", func(d *facts.Document) { d.OnFile[0].Newest.Lacks = []string{"inspector", "measures"} },
			"the record of the inspection of S1 on 2026-06-01 does not show that somebody found it fit; it does not give: inspector, measures", "loft.gear.yaml#/items/0/inspections/0", 0},
		{"inspection/record_incomplete", "not_all_said", func(d *facts.Document) { d.OnFile[0].Newest.Lacks = []string{"next_due"} },
			"the record of the inspection of S1 on 2026-06-01 does not give: next due", "loft.gear.yaml#/items/0/inspections/0", 0},
		{"inspection/record_in_doubt", "unfit_later", doubt("unfit_after_the_day", "failed"),
			"the periodic inspection of S1 is dated 2027-01-11, after the day that is judged for, and says: failed; see whether the year is right, and until then use another", doubtAt, 0},
		{"inspection/record_in_doubt", "without_outcome", doubt("inspection_without_outcome", "no outcome"),
			"the record of the periodic inspection of S1 on 2027-01-11 does not say what it came to, and nobody who is named has found it fit since in one that goes as far", doubtAt, 0},
		{"inspection/record_in_doubt", "later", doubt("after_the_day", "passed"),
			"the periodic inspection of S1 is dated 2027-01-11, after the day that is judged for, and does not count; it says: passed; see whether the year is right", doubtAt, 0},
		{"inspection/record_in_doubt", "look_without_outcome", doubt("look_without_outcome", "no outcome"),
			"the record of the periodic inspection of S1 on 2027-01-11 does not say what it came to, and nobody who is named has found it fit since", doubtAt, 0},
		{"inspection/record_in_doubt", "due_before_it", doubt("due_before_it", "2026-01-11"),
			"the record of the periodic inspection of S1 on 2027-01-11 contradicts itself: it sets 2026-01-11, before its own day, for the next", doubtAt, 0},
		{"inspection/repair_untested", "sling", repaired("chain_sling"),
			"S1 was repaired on 2026-08-01, and no proof test with its rated load or more that it held, with the name of who did it, is on record since: have it tested before it is used", doubtAt, 0},
		{"inspection/repair_untested", "other", repaired("wire_rope_sling"),
			"S1 was repaired on 2026-08-01, and no proof test with its rated load or more that it held, with the name of who did it, is on record since: have it tested before it is used", doubtAt, 0},
		{"inspection/proof_test_missing", "missing", proof("no", nil),
			"no proof test of SB1 that it held, with the name of who did it, is on record: it is tested with <least_ratio 1.25> of its rated load before it is first used", "loft.gear.yaml#/items/1", 0},
		{"inspection/proof_test_missing", "load_not_given", proof("load_not_given", nil),
			"the record of the proof test of SB1 does not give its load: <least_ratio 1.25> of the rated load is asked for", "loft.gear.yaml#/items/1", 0},
		{"inspection/proof_test_missing", "too_low", proof("yes", ptr(1.1)),
			"SB1 was proof-tested with <proof_over_rated_ratio 1.1> of its rated load; <least_ratio 1.25> is asked for", "loft.gear.yaml#/items/1", 1.1},
	}...)
}

const doubtAt = "loft.gear.yaml#/items/0/inspections/1"

func doubt(what, says string) func(*facts.Document) {
	return func(d *facts.Document) {
		r := &d.Doubtful[0]
		r.Date, r.Named, r.Doubt, r.Says = "2027-01-11", "periodic inspection", what, says
	}
}

func repaired(kind string) func(*facts.Document) {
	return func(d *facts.Document) {
		d.OnFile[0].Kind, d.OnFile[0].Repair = kind, facts.RepairOnRecord{At: doubtAt, Date: "2026-08-01", ProofTested: "no"}
	}
}

func unfit(what, named string) facts.FailedOnRecord {
	return facts.FailedOnRecord{At: "loft.gear.yaml#/items/0/inspections/1", Date: "2026-12-03", What: what, Named: named}
}

func proof(tested string, ratio *float64) func(*facts.Document) {
	return func(d *facts.Document) {
		d.OnFile[beamOnFile].ProofTested, d.OnFile[beamOnFile].ProofRatio = tested, ratio
	}
}

func wentBack(how, because string) func(*facts.Document) {
	return func(d *facts.Document) {
		d.Signs[kinkSign].WentBack = how
		d.Signs[kinkSign].Back = facts.Back{Worse: "yes", WorseDate: "2026-06-01", Better: "no", BetterDate: "2026-06-02", Because: because}
	}
}

// breaksSigns has each rule over what inspections looked for.
func breaksSigns() []broken {
	sign := func(i int, change func(*facts.Sign)) func(*facts.Document) {
		return func(d *facts.Document) { change(&d.Signs[i]) }
	}
	wires := func(what, rope string, n float64) func(*facts.Document) {
		return sign(laySign, func(s *facts.Sign) { s.What, s.Named, s.Rope, s.Count = what, "broken wires", rope, &n })
	}
	many := func(grade, what, rope string, n float64, limit string) broken {
		figure := mark("count", n)
		return broken{"inspection/broken_wires", grade, wires(what, rope, n),
			"S1 had " + figure + " broken wires on 2026-06-01: with " + limit + " and more it is taken out of service", "#/broken_wires_in_one_lay", n}
	}
	return []broken{
		{"inspection/damage_found", "removal", sign(kinkSign, func(s *facts.Sign) { s.Seen = ptr(true) }),
			"a kink was found on S1 on 2026-06-01: it is taken out of service", "#/kink", 0},
		{"inspection/damage_found", "to_be_judged", sign(kinkSign, func(s *facts.Sign) { s.What, s.Named, s.Seen = "thimble_loose", "a loose thimble", ptr(true) }),
			"a loose thimble was found on S1 on 2026-06-01: have a qualified person judge it before the lift", "#/kink", 0},
		{"inspection/figures_went_back", "not_counted", wentBack("not_counted", "names no inspector"),
			"a kink on S1: yes on 2026-06-01, no on 2026-06-02; the later record names no inspector, so the earlier one counts", "#/kink", 0},
		{"inspection/figures_went_back", "counted", wentBack("counted", ""),
			"a kink on S1: yes on 2026-06-01, no on 2026-06-02, and no repair on record between them: find out which is right, and whether both are of this item", "#/kink", 0},
		many("in_lay", "broken_wires_in_one_lay", "single_part", 10, "<lay 10>"),
		many("in_strand", "broken_wires_in_one_strand_in_one_lay", "single_part", 5, "<strand 5>"),
		many("in_cable_lay", "broken_wires_in_one_lay", "cable_laid", 20, "<cable_lay 20>"),
		many("in_braid", "broken_wires_in_one_lay", "multi_part", 20, "<braid 20>"),
		many("in_large_braid", "broken_wires_in_one_lay", "multi_part_of_8_and_more", 40, "<large_braid 40>"),
		many("in_six_diameters", "broken_wires_in_6_d", "single_part", 10, "<six_diameters 10>"),
		many("in_thirty_diameters", "broken_wires_in_30_d", "single_part", 14, "<thirty_diameters 14>"),
		many("side_by_side", "broken_wires_adjacent", "single_part", 3, "<adjacent 3>"),
		{"inspection/broken_wires_at_end", "", sign(endSign, func(s *facts.Sign) { s.Count = ptr(2.0) }),
			"S1 had <count 2> broken wires at a sleeve or splice on 2026-06-01; with more than <most 1> a qualified person looks at it before it is used", "#/broken_wires_at_fitting", 2},
		{"inspection/worn", "outer_wires", sign(wireSign, func(s *facts.Sign) { s.LostRatio = ptr(0.4) }),
			"wear of the outer wires of S1 was <lost_ratio 0.4> on 2026-06-01: from <outer_wires_ratio 0.333> on it is taken out of service", "#/outer_wire_wear", 0.4},
		{"inspection/worn", "section", sign(wireSign, func(s *facts.Sign) { s.What, s.Named, s.LostRatio = "wear", "wear", ptr(0.1) }),
			"wear of S1 was <lost_ratio 0.1> on 2026-06-01: from <section_ratio 0.1> on it is taken out of service", "#/outer_wire_wear", 0.1},
		{"inspection/hook_opened", "opened", sign(throatSign, func(s *facts.Sign) { s.GrewRatio = ptr(0.06) }),
			"the throat of S1 had opened by <grew_ratio 0.06> on 2026-06-01: from <opened_ratio 0.05> on it is taken out of service", "#/throat_now", 0.06},
		{"inspection/hook_opened", "opened_far", sign(throatSign, func(s *facts.Sign) { s.GrewM = ptr(0.007) }),
			"the throat of S1 had opened by <grew_m 0.007> on 2026-06-01: over <opened_m 0.00635> it is taken out of service", "#/throat_now", 0.007},
		{"inspection/hook_twisted", "removal", sign(twistSign, func(s *facts.Sign) { s.TwistDeg = ptr(12.0) }),
			"the hook of S1 was twisted <twist_out_of_plane_deg 12> out of its plane on 2026-06-01: from <most_deg 1> on it is taken out of service", "#/twist", 12},
		{"inspection/hook_twisted", "to_be_judged", sign(twistSign, func(s *facts.Sign) { s.TwistDeg = ptr(0.7) }),
			"the hook of S1 was twisted <twist_out_of_plane_deg 0.7> out of its plane on 2026-06-01: from <seen_deg 0.5> on a qualified person judges it before the lift", "#/twist", 0.7},
		{"inspection/stretched", "chain", sign(stretchSign, func(s *facts.Sign) { s.GrewRatio = ptr(0.06) }),
			"S1 had become longer by <grew_ratio 0.06> on 2026-06-01: from <chain_ratio 0.01> on it is taken out of service", "#/stretch", 0.06},
		{"inspection/stretched", "fitting", sign(stretchSign, func(s *facts.Sign) { s.Kind, s.GrewRatio = "master_link", ptr(0.12) }),
			"S1 had become longer by <grew_ratio 0.12> on 2026-06-01: from <fitting_ratio 0.01> on it is taken out of service", "#/stretch", 0.12},
		{"inspection/stretched", "chain_length", sign(stretchSign, func(s *facts.Sign) { s.What, s.GrewRatio = "length_now", ptr(0.06) }),
			"S1 had become longer by <grew_ratio 0.06> on 2026-06-01: from <chain_length_ratio 0.05> on it is taken out of service", "#/stretch", 0.06},
		{"inspection/stretched", "to_be_judged", sign(stretchSign, func(s *facts.Sign) { s.GrewRatio = ptr(0.006) }),
			"S1 had become longer by <grew_ratio 0.006> on 2026-06-01: from <judged_ratio 0.005> on, which is more than measuring it is out by, a qualified person judges it before the lift", "#/stretch", 0.006},
		{"inspection/stretched", "longer", sign(stretchSign, func(s *facts.Sign) { s.What, s.Kind, s.GrewRatio = "length_now", "web_sling", ptr(0.03) }),
			"S1 was longer than the register says by <grew_ratio 0.03> on 2026-06-01: from <longer_ratio 0.02> on a qualified person judges it; what is computed here has the length of the register", "#/stretch", 0.03},
		{"inspection/stretched", "longer_chain", sign(stretchSign, func(s *facts.Sign) { s.What, s.GrewRatio = "length_now", ptr(0.03) }),
			"S1 was longer than the register says by <grew_ratio 0.03> on 2026-06-01: from <longer_ratio 0.02> on a qualified person judges it; what is computed here has the length of the register", "#/stretch", 0.03},
		{"inspection/diameter_lost", "removal", sign(diameterSign, func(s *facts.Sign) { s.LostRatio = ptr(0.12) }),
			"S1 was <lost_ratio 0.12> thinner on 2026-06-01 than it was made: from <most_ratio 0.1> on it is taken out of service", "#/diameter_now", 0.12},
		{"inspection/diameter_lost", "to_be_judged", sign(diameterSign, func(s *facts.Sign) { s.LostRatio = ptr(0.06) }),
			"S1 was <lost_ratio 0.06> thinner on 2026-06-01 than it was made: from <watch_ratio 0.05> on a qualified person judges it before the lift", "#/diameter_now", 0.06},
	}
}
