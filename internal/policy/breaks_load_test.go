package policy_test

import "liftlint/internal/facts"

func breaksLoad() []broken {
	return append(breaksWhatIsLifted(), []broken{
		{"load/over_rated_load", "over", func(d *facts.Document) { d.Parts[0].UsedRatio = ptr(1.2) },
			"S1 in leg hook/1 has a design force of <load_n 30000> (own_force), <used_ratio 1.2> of its rated load <rated_load_n 50000>; at most <over_ratio 1> is allowed", "#/part/0", 1.2},
		{"load/over_rated_load", "over_pulled_aside", func(d *facts.Document) {
			p := &d.Parts[0]
			p.Kind, p.RatedLoadN, p.UsedRatio, p.PullOffDeg = "shackle", ptr(25000.0), ptr(1.2), ptr(50.0)
		},
			"S1 in leg hook/1 has a design force of <load_n 30000> (own_force), <used_ratio 1.2> of what it may carry as it is loaded, <rated_load_n 25000>; at most <over_ratio 1> is allowed. It is marked <marked_load_n 50000>, of which heat leaves 70 %", "#/part/0", 1.2},
		{"load/over_rated_load", "over_at_angle", func(d *facts.Document) {
			p := &d.Parts[0]
			p.RatedLoadN, p.UsedRatio, p.PullOffDeg = ptr(25000.0), ptr(1.2), ptr(50.0)
		},
			"S1 in leg hook/1 has a design force of <load_n 30000> (own_force), <used_ratio 1.2> of what it may carry as used, <rated_load_n 25000>; at most <over_ratio 1> is allowed. It is marked <marked_load_n 50000>, of which heat leaves 70 %", "#/part/0", 1.2},
		{"load/over_rated_load", "near_at_angle", func(d *facts.Document) {
			p := &d.Parts[0]
			p.RatedLoadN, p.UsedRatio, p.PullOffDeg = ptr(32000.0), ptr(0.94), ptr(12.0)
		},
			"S1 in leg hook/1 has a design force of <load_n 30000> (own_force), <used_ratio 0.94> of what it may carry as used, <rated_load_n 32000>; over <near_ratio 0.9> leaves little for what is not known. It is marked <marked_load_n 50000>, of which heat leaves 70 %", "#/part/0", 0.94},
		{"load/over_rated_load", "near", func(d *facts.Document) { d.Parts[0].UsedRatio = ptr(0.95); d.Parts[0].LoadN = nil },
			"S1 in leg hook/1 has a design force of unknown (own_force), <used_ratio 0.95> of its rated load <rated_load_n 50000>; over <near_ratio 0.9> leaves little for what is not known", "#/part/0", 0.95},
		{"load/bound_over_rated_load", "over_pulled_aside", func(d *facts.Document) {
			p := &d.Parts[0]
			p.Kind, p.RatedLoadN, p.UsedRatio, p.PullOffDeg, p.LoadBoundN = "shackle", ptr(35000.0), ptr(0.86), ptr(12.0), ptr(36000.0)
		},
			"S1 in leg hook/1 can be made to carry <load_bound_n 36000> by small differences of length; pulled aside as it is, it is rated for <rated_load_n 35000>, and is marked <marked_load_n 50000>", "#/part/0", 36000},
		{"load/bound_over_rated_load", "over_at_angle", func(d *facts.Document) {
			p := &d.Parts[0]
			p.RatedLoadN, p.UsedRatio, p.PullOffDeg, p.LoadBoundN = ptr(35000.0), ptr(0.86), ptr(12.0), ptr(36000.0)
		},
			"S1 in leg hook/1 can be made to carry <load_bound_n 36000> by small differences of length; as it is used it is rated for <rated_load_n 35000>. It is marked <marked_load_n 50000>, of which heat leaves 70 %", "#/part/0", 36000},
		{"load/bound_over_rated_load", "over", func(d *facts.Document) { d.Parts[0].LoadBoundN = ptr(51000.0) },
			"S1 in leg hook/1 can be made to carry <load_bound_n 51000> by small differences of length; it is rated for <rated_load_n 50000>", "#/part/0", 51000},
		{"load/hook_not_plumb", "", func(d *facts.Document) { d.Loads[0].PlumbOffsetM = ptr(0.25) },
			"with the load as it is meant to hang, its center of gravity lies <plumb_offset_m 0.25> beside the hook, and the load swings by that much as it leaves the ground; up to <offset_m 0.1> is taken as plumb", "#/load", 0.25},
		{"load/turned_in_leaps", "", func(d *facts.Document) { d.Loads[0].PitchStepDeg = 20 },
			"between two positions of its phases the load is turned by <pitch_step_deg 20>, and nothing of what lies between was looked at; at most <most_deg 15> is taken: add a phase, or take smaller steps", "#/load", 20},
		{"load/swings_free", "", func(d *facts.Document) { d.Loads[onSeveral].SwingM = ptr(0.3) },
			"the load swings <swing_m 0.3> to the side as it comes free under its hooks; up to <most_m 0.1> is taken as coming free plumb: set the hooks plumb over what they hold", "#/load2", 0.3},
		{"load/mass_estimated", "", func(d *facts.Document) { d.Loads[0].MostUsedRatio = ptr(0.8) },
			"the load's mass is estimated, and S1 in leg hook/1 carries <most_used_ratio 0.8> of its rated load; over <estimated_ratio 0.75> the mass has to be known better", "#/load", 0.8},
		{"load/mass_tolerance_missing", "not_weighed", func(d *facts.Document) { d.Loads[0].MassToleranceGiven = false },
			"the load's mass is estimated, and the plan does not say how far it may be off: without `mass_tolerance` all forces are computed at the bare figure", "#/load", 0},
		{"load/mass_tolerance_missing", "weighed", func(d *facts.Document) {
			d.Loads[0].MassToleranceGiven, d.Loads[0].MassKnownBy = false, ptr("weighed")
		},
			"the load is weighed, and the plan does not say how far the scale may be off: add its `mass_tolerance`", "#/load", 0},
		{"load/turns_over", "points_below_center_of_gravity", func(d *facts.Document) { d.Loads[0].Hangs = ptr("points_below_center_of_gravity") },
			"the load turns over: it hangs from one point or from points in one line, and its center of gravity lies above them; no hook height mends that", "#/load", 0},
		{"load/turns_over", "at_worst", func(d *facts.Document) { d.Loads[0].HangsAtWorst = ptr("does_not_balance") },
			"the load turns over or finds no rest with +x +y -z", "#/load", 0},
		{"load/turns_over", "overturns", func(d *facts.Document) { d.Loads[0].Hangs = ptr("overturns") },
			"the load turns over: it does not stay as it is meant to hang", "#/load", 0},
		{"load/turns_over", "rocks", func(d *facts.Document) { d.Loads[0].Hangs = ptr("rocks") },
			"the load can rock: near the way it hangs nothing rights it until a slack leg comes taut, and it may settle to either side", "#/load", 0},
		{"load/steady_by_little", "neutral", func(d *facts.Document) { d.Loads[0].MayRiseM = ptr(0.0005) },
			"nothing rights the load when it is turned: its center of gravity lies level with what it hangs from", "#/load", 0.0005},
		{"load/steady_by_little", "little", func(d *facts.Document) { d.Loads[0].MayRiseM = ptr(0.03) },
			"the load turns over once its center of gravity lies <center_may_rise_m 0.03> higher than the plan has it; under <warning_m 0.05> that is no more than such a height is known by", "#/load", 0.03},
		{"load/rigging_mass_missing", "", func(d *facts.Document) { d.Hooks[0].ItemsWithoutMass = 3 },
			"the plan gives no mass for <items_without_mass 3> of the slings and fittings; what is not given counts as nothing on the hook", "#/hook", 3},
		{"load/tilt", "far", func(d *facts.Document) { d.Loads[0].TiltDeg = ptr(12.0) },
			"the load in phase a hangs tilted by <tilt_deg 12> from how it is meant to hang; at most <error_deg 10> is taken as level enough", "#/load", 12},
		{"load/tilt", "far_at_worst", func(d *facts.Document) { d.Loads[0].TiltAtWorstDeg = ptr(12.0) },
			"within the tolerances of the plan the load in phase b can hang tilted by <tilt_at_worst_deg 12> from how it is meant to hang; at most <error_deg 10> is taken as level enough", "#/load", 12},
		{"load/tilt", "some_at_worst", func(d *facts.Document) { d.Loads[0].TiltAtWorstDeg = ptr(6.0) },
			"within the tolerances of the plan the load in phase b can hang tilted by <tilt_at_worst_deg 6> from how it is meant to hang; at most <warning_deg 5> is taken as level enough", "#/load", 6},
		{"load/tilt", "some", func(d *facts.Document) { d.Loads[0].TiltDeg = ptr(6.0) },
			"the load in phase a hangs tilted by <tilt_deg 6> from how it is meant to hang; at most <warning_deg 5> is taken as level enough", "#/load", 6},
	}...)
}

func breaksWhatIsLifted() []broken {
	load := func(change func(*facts.Load)) func(*facts.Document) {
		return func(d *facts.Document) { change(&d.Loads[0]) }
	}
	cast := func(change func(*facts.Attachment)) func(*facts.Document) {
		return func(d *facts.Document) { change(&d.Attachments[insert]) }
	}
	return []broken{
		{"load/center_of_gravity_outside", "", load(func(l *facts.Load) { l.CenterOutsideM = ptr(0.3) }),
			"the center of gravity lies <center_outside_m 0.3> outside the load's own size: one of the two is not as written", "#/load", 0.3},
		{"load/not_shown_free", "", load(func(l *facts.Load) { l.Freed = false }),
			"the plan does not say how it was made sure that nothing holds the load down: add `freed`", "#/load", 0},
		{"load/contents_can_move", "loose", load(func(l *facts.Load) { l.Contents = "loose" }),
			"something in the load can move and is not secured: the center of gravity does not stay where the plan has it", "#/load", 0},
		{"load/contents_can_move", "not_given", load(func(l *facts.Load) { l.Contents = "not_given" }),
			"the plan does not say whether anything in the load can move: add `contents`", "#/load", 0},
		{"load/hazardous_contents", "without_precaution", load(func(l *facts.Load) { l.Contents, l.Hazard = "secured", "without_precaution" }),
			"what is in the load is hazardous, and the plan states no precaution", "#/load", 0},
		{"load/hazardous_contents", "not_given", load(func(l *facts.Load) { l.Contents, l.Hazard = "secured", "not_given" }),
			"the plan does not say whether what is in the load is hazardous: add `hazardous` to its contents", "#/load", 0},
		{"load/strength_not_confirmed", "", load(func(l *facts.Load) { l.FlattestLegDeg, l.ThrustN = ptr(60.0), ptr(9000.0) }),
			"its legs, the flattest at <flattest_leg_from_horizontal_deg 60> from horizontal (from <plumb_deg 85> on a leg counts as plumb), put up to <thrust_n 9000> of compression into the load, and the plan does not say who or what confirms that it bears that: add `strength_confirmed_by`", "#/load", 60},
		{"load/insert_weak", "tilt_up", cast(func(a *facts.Attachment) { a.Panel, a.BreakingTimes = ptr("tilt_up"), ptr(1.8) }),
			"insert I1 holds <breaking_over_pull_times 1.8> the pull on it; in a panel that is tilted up at least <tilt_up_times 2> is asked for", "#/attachment/4", 1.8},
		{"load/insert_weak", "other", cast(func(a *facts.Attachment) { a.BreakingTimes = ptr(3.5) }),
			"insert I1 holds <breaking_over_pull_times 3.5> the pull on it; at least <other_times 4> is asked for", "#/attachment/4", 3.5},
		{"load/insert_weak", "hardware", cast(func(a *facts.Attachment) { a.HardwareBreakingTimes = ptr(4.5) }),
			"the lifting hardware in insert I1 holds <hardware_breaking_over_pull_times 4.5> the pull on it; at least <hardware_times 5> is asked for", "#/attachment/4", 4.5},
		{"load/concrete_too_young", "", cast(func(a *facts.Attachment) { a.ConcreteStrengthPa = ptr(12e6) }),
			"the concrete round insert I1 has <concrete_strength_pa 1.2e+07>; the breaking load of the insert holds from <concrete_strength_needed_pa 1.5e+07> on", "#/attachment/4", 12e6},
	}
}
