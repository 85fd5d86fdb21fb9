package policy_test

import (
	"context"
	"fmt"

	"liftlint/internal/facts"
	"liftlint/internal/policy"
)

func ptr[T any](v T) *T { return &v }

// level is a lift that meets every built-in rule: four legs at 65 degrees.
func level() *facts.Document {
	d := &facts.Document{
		Lifts: []facts.Lift{{
			Record: facts.Record{Key: "lift", At: "#/lift"}, ID: "SQ-7", Title: "Set pump PS-2",
			Category: "routine", Profile: "us", Stage: policy.Review, Legs: 4,
		}},
		Hooks: []facts.Hook{{Record: facts.Record{Key: "hook/hook", At: "#/hook"}, ID: "hook", LegsDirect: 2}},
		Loads: []facts.Load{{
			Record: facts.Record{Key: "load", At: "#/load"}, MassKg: ptr(8000.0), MassUpperKg: ptr(8200.0),
			MassKnownBy: ptr("estimated"), MassToleranceGiven: true, MostUsedRatio: ptr(0.6), MostUsedPart: ptr("S1 in leg hook/1"),
			Hangs: ptr("steady"), TiltDeg: ptr(1.5), RightingM: ptr(1.2), PlumbOffsetM: ptr(0.1),
		}},
	}
	for i := 1; i <= 4; i++ {
		addLeg(d, i)
	}
	d.Finish()
	return d
}

// addLeg adds a leg with its sling, shackle and attachment.
func addLeg(d *facts.Document, i int) {
	at := func(key string) facts.Record {
		return facts.Record{Key: fmt.Sprintf("%s/%d", key, i), At: fmt.Sprintf("#/%s/%d", key, i-1)}
	}
	sling := fmt.Sprintf("S%d", i)
	d.Legs = append(d.Legs, facts.Leg{
		Record: at("leg"), ID: fmt.Sprintf("hook/%d", i), From: "hook", To: "A", EndsIn: "shackle", EndsAt: "padeye", Split: "settled_by_stiffness",
		Slack: ptr(false), AngleFromHorizontalDeg: ptr(65.0), TensionN: ptr(22000.0), ShareRatio: ptr(1.0),
	})
	d.Attachments = append(d.Attachments, facts.Attachment{Record: at("attachment"), ID: "A", Kind: "padeye", Legs: 1})
	d.Gear = append(d.Gear, facts.Gear{
		Record: at("gear"), ID: sling, Kind: "wire_rope_sling", Uses: 1,
		EyeKinds: []string{"flemish_sleeve"}, TagNamesDiameter: true, TagNamesDesignFactor: true,
		Tag: facts.Tag{At: "#/tag", State: "legible", Diameter: ptr("agrees"), DesignFactor: ptr(5.0), Shows: []string{"maker", "diameter", "rated_load", "hitch", "angle_from_horizontal", "serial", "legs", "design_factor"}},
		Inspection: &facts.Inspection{
			At: fmt.Sprintf("#/gear/%d/inspection", i-1), Date: "2026-05-04", Due: ptr("2027-05-04"), OverdueDays: ptr(-151.0),
		},
	})
	d.Parts = append(d.Parts, facts.Part{
		Record: at("part"), ID: sling, Kind: "wire_rope_sling", Where: "leg hook/1", Split: "settled_by_stiffness",
		JudgedBy: ptr("own_force"), LoadN: ptr(30000.0), LoadBoundN: ptr(44000.0), RatedLoadN: ptr(50000.0), UsedRatio: ptr(0.6),
	})
	d.Fits = append(d.Fits, facts.Fit{
		Record: at("fit"), What: "eye_over_hook", Inner: sling + "'s upper eye", Outer: "the crane hook",
		WidthOverLengthRatio: ptr(0.35), EyeIncludedAngleDeg: ptr(24.4),
	})
	if i == 4 { // one with a thimble among soft eyes
		f := &d.Fits[3]
		f.Thimble, f.BodyWidthM, f.EyeWidthM = true, ptr(0.04), ptr(0.05)
	}
}

// broken is one way to break a rule, on the first record of its collection.
type broken struct {
	rule, grade string
	change      func(*facts.Document)
	message     string
	place       string
	measured    float64 // of the figure, when the rule has one
}

// breaks has each built-in rule, at each of its grades.
func breaks() []broken {
	return []broken{
		{"angle/leg_too_flat", "too_flat", func(d *facts.Document) { d.Legs[0].AngleFromHorizontalDeg = ptr(28.5) },
			"leg hook/1 hangs at <angle_from_horizontal_deg 28.5> from horizontal; at least <error_deg 30> is asked for", "#/leg/0", 28.5},
		{"angle/leg_too_flat", "flat", func(d *facts.Document) { d.Legs[0].AngleFromHorizontalDeg = ptr(40.0) },
			"leg hook/1 hangs at <angle_from_horizontal_deg 40> from horizontal; under <warning_deg 45> small errors of length or height change its pull much", "#/leg/0", 40},
		{"angle/leg_too_flat", "below_usual", func(d *facts.Document) { d.Legs[0].AngleFromHorizontalDeg = ptr(55.0) },
			"leg hook/1 hangs at <angle_from_horizontal_deg 55> from horizontal; legs are usually kept at <note_deg 60> or steeper", "#/leg/0", 55},
		{"load/over_rated_load", "over", func(d *facts.Document) { d.Parts[0].UsedRatio = ptr(1.2) },
			"S1 in leg hook/1 is judged with <load_n 30000> by own_force, <used_ratio 1.2> of its rated load <rated_load_n 50000>; at most <over_ratio 1> is allowed", "#/part/0", 1.2},
		{"load/over_rated_load", "near", func(d *facts.Document) { d.Parts[0].UsedRatio = ptr(0.95); d.Parts[0].LoadN = nil },
			"S1 in leg hook/1 is judged with unknown by own_force, <used_ratio 0.95> of its rated load <rated_load_n 50000>; over <near_ratio 0.9> leaves little for what is not known", "#/part/0", 0.95},
		{"load/bound_over_rated_load", "", func(d *facts.Document) { d.Parts[0].LoadBoundN = ptr(51000.0) },
			"S1 in leg hook/1 can be made to carry <load_bound_n 51000> by small differences of length; it is rated for <rated_load_n 50000>", "#/part/0", 51000},
		{"load/hook_not_plumb", "", func(d *facts.Document) { d.Loads[0].PlumbOffsetM = ptr(0.25) },
			"held as it is meant to hang, the load has its center of gravity <plumb_offset_m 0.25> beside the hook and swings there as it leaves the ground; at most <offset_m 0.2> is usual", "#/load", 0.25},
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
		{"load/turns_over", "overturns", func(d *facts.Document) { d.Loads[0].Hangs = ptr("overturns") },
			"the load turns over: it does not stay as it is meant to hang", "#/load", 0},
		{"load/turns_over", "rocks", func(d *facts.Document) { d.Loads[0].Hangs = ptr("rocks") },
			"the load can rock: near the way it hangs nothing rights it until a slack leg comes taut, and it may settle to either side", "#/load", 0},
		{"load/steady_by_little", "neutral", func(d *facts.Document) { d.Loads[0].RightingM = ptr(0.0005) },
			"nothing rights the load when it is turned: its center of gravity lies level with what it hangs from", "#/load", 0.0005},
		{"load/steady_by_little", "little", func(d *facts.Document) { d.Loads[0].RightingM = ptr(0.04) },
			"what rights the load when it is turned is as little as a pendulum of <righting_m 0.04> has; under <warning_m 0.05> a small error of the center of gravity turns it over", "#/load", 0.04},
		{"load/rigging_mass_missing", "", func(d *facts.Document) { d.Hooks[0].ItemsWithoutMass = 3 },
			"<items_without_mass 3> of the links, slings and shackles have no mass in the plan and count as nothing on the hook", "#/hook", 3},
		{"fit/legs_on_hook", "", func(d *facts.Document) { d.Hooks[0].LegsDirect = 4 },
			"<legs_direct 4> legs go over the hook itself; with more than <most 2> a link gathers them", "#/hook", 4},
		{"fit/thimble_over_body", "", func(d *facts.Document) {
			d.Fits[0].Thimble, d.Fits[0].BodyWidthM, d.Fits[0].EyeWidthM = true, ptr(0.08), ptr(0.045)
		}, "the crane hook is <body_width_m 0.08> wide; the thimble in S1's upper eye has <eye_width_m 0.045> inside", "#/fit/0", 0.08},
		{"route/eye_on_padeye", "", func(d *facts.Document) { d.Legs[0].EndsIn = "wire_rope_sling" },
			"leg hook/1 ends with a sling's eye at padeye A: put the shackle that joins them into the leg", "#/leg/0", 0},
		{"route/eye_to_eye", "", func(d *facts.Document) { d.Legs[0].EyeToEye = 1 },
			"leg hook/1 puts one sling's eye straight into another's: write the shackle that joins them", "#/leg/0", 0},
		{"tag/design_factor_low", "", func(d *facts.Document) { d.Gear[0].Tag.DesignFactor = ptr(4.0) },
			"the tag of S1 rests on a design factor of <tag.design_factor 4>; at least <least 5> is asked for", "#/tag", 4},
		{"tension/leg_nearly_slack", "", func(d *facts.Document) { d.Legs[0].ShareRatio = ptr(0.1) },
			"leg hook/1 carries <share_ratio 0.1> of what the legs carry on the mean; under <least_ratio 0.15> it is close to going slack, and the load to turning", "#/leg/0", 0.1},
		{"route/gear_unused", "", func(d *facts.Document) { d.Gear[0].Uses = 0 },
			"S1 is in no leg and no link: use it, or take it out of the plan", "#/gear/0", 0},
		{"sling/turn_back_eye", "not_given", func(d *facts.Document) { d.Gear[0].EyeKinds = []string{"not_given"} },
			"the plan does not say how the eyes of S1 are made", "#/gear/0", 0},
		{"sling/turn_back_eye", "turn_back", func(d *facts.Document) { d.Gear[0].EyeKinds = []string{"turn_back_sleeve"} },
			"S1 has an eye that its sleeve alone holds; for overhead hoisting an eye of re-laid strands is advised", "#/gear/0", 0},
		{"tag/diameter_disagrees", "", func(d *facts.Document) { d.Gear[0].Tag.Diameter = ptr("differs") },
			"the tag of S1 names another diameter than the sling has in the plan: find out which sling it is", "#/tag", 0},
		{"load/tilt", "far", func(d *facts.Document) { d.Loads[0].TiltDeg = ptr(12.0) },
			"the load hangs tilted by <tilt_deg 12> from how it is meant to hang; at most <error_deg 10> is taken as level enough", "#/load", 12},
		{"load/tilt", "some", func(d *facts.Document) { d.Loads[0].TiltDeg = ptr(6.0) },
			"the load hangs tilted by <tilt_deg 6> from how it is meant to hang; at most <warning_deg 5> is taken as level enough", "#/load", 6},
		{"tension/leg_slack", "", func(d *facts.Document) { d.Legs[0].Slack = ptr(true); d.Legs[0].AngleFromHorizontalDeg = nil },
			"leg hook/1 to A hangs slack: the other legs carry its share", "#/leg/0", 0},
		{"tag/missing_or_incomplete", "missing", func(d *facts.Document) { d.Gear[0].Tag.State = "missing" },
			"sling S1 has no tag: it stays out of service until a qualified person has identified, inspected and re-tagged it", "#/tag", 0},
		{"tag/missing_or_incomplete", "illegible", func(d *facts.Document) { d.Gear[0].Tag.State = "illegible" },
			"the tag of sling S1 can't be read: it stays out of service until a qualified person has identified, inspected and re-tagged it", "#/tag", 0},
		{"tag/missing_or_incomplete", "not_recorded", func(d *facts.Document) { d.Gear[0].Tag.State = "not_recorded" },
			"the plan says nothing of a tag on sling S1: write down what it shows", "#/tag", 0},
		{"tag/missing_or_incomplete", "incomplete", func(d *facts.Document) { d.Gear[0].Tag.Shows = []string{"diameter", "hitch", "angle_from_horizontal"} },
			"the tag of sling S1 does not show: maker, rated load", "#/tag", 0},
		{"inspection/overdue", "", func(d *facts.Document) { d.Gear[0].Inspection.OverdueDays = ptr(12.0) },
			"S1 is <inspection.overdue_days 12> past its periodic inspection, due on <inspection.due 2027-05-04>", "#/gear/0/inspection", 12},
		{"tag/useful_fields_missing", "", func(d *facts.Document) {
			d.Gear[0].Tag.Shows = []string{"maker", "diameter", "rated_load", "hitch", "angle_from_horizontal", "legs"}
		},
			"the tag of sling S1 does not show, though it would be useful: serial, design factor", "#/tag", 0},
		{"inspection/due_soon", "", func(d *facts.Document) { d.Gear[0].Inspection.OverdueDays = ptr(-30.0) },
			"the periodic inspection of S1 holds on the day of the lift and is due on <inspection.due 2027-05-04>, within <soon_days 30> of it", "#/gear/0/inspection", 0},
		{"fit/eye_over_body", "too_wide", func(d *facts.Document) { d.Fits[0].WidthOverLengthRatio = ptr(0.6) },
			"the width of the crane hook is <width_over_length_ratio 0.6> of the length of S1's upper eye; at most <error_ratio 0.5> keeps the sides of the eye from opening at the crotch", "#/fit/0", 0.6},
		{"fit/eye_over_body", "spread", func(d *facts.Document) { d.Fits[0].EyeIncludedAngleDeg = ptr(33.0) },
			"S1's upper eye opens to an included angle of <eye_included_angle_deg 33> over the crane hook; up to <note_deg 30> is usual", "#/fit/0", 33},
		{"route/attachment_unused", "", func(d *facts.Document) { d.Attachments[0].Legs = 0 },
			"no leg goes to attachment A: give it a leg, or take it out of the plan", "#/attachment/0", 0},
	}
}

// mark renders a figure so that a test can tell which field it was.
func mark(field string, value any) string {
	if s, ok := value.(string); ok && field != "inspection.due" {
		return s
	}
	return fmt.Sprintf("<%s %v>", field, value)
}

// fataler is a test, of whichever kind.
type fataler interface {
	Helper()
	Fatal(args ...any)
}

func judge(t fataler, p *policy.Pack, d *facts.Document) map[string]policy.Verdict {
	t.Helper()
	list, err := p.Judge(context.Background(), d)
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]policy.Verdict{}
	for _, v := range list {
		out[v.Rule.ID] = v
	}
	return out
}
