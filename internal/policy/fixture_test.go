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
			Category: "routine", Profile: "us", Stage: policy.Prelift, Legs: 4,
		}},
		Hooks: []facts.Hook{{Record: facts.Record{Key: "hook/hook", At: "#/hook"}, ID: "hook", LegsDirect: 2, HeightGiven: true, HeightM: ptr(7.0), HeightOffM: ptr(0.02)}},
		Loads: []facts.Load{{
			Record: facts.Record{Key: "load", At: "#/load"}, MassKg: ptr(8000.0), MassUpperKg: ptr(8200.0),
			MassKnownBy: ptr("estimated"), MassToleranceGiven: true, MostUsedRatio: ptr(0.6), MostUsedPart: ptr("S1 in leg hook/1"),
			Hangs: ptr("steady"), TiltDeg: ptr(1.5), RightingM: ptr(1.2), PlumbOffsetM: ptr(0.1),
			TiltAtWorstDeg: ptr(2.5), MayRiseM: ptr(1.3), HangsFrom: "one_hook", Phases: 1, Named: "the load", TiltNamed: "the load in phase a", WorstTiltNamed: "the load in phase b",
		}},
	}
	for i := 1; i <= 4; i++ {
		addLeg(d, i)
	}
	slingsLevel(d)
	fitsLevel(d)
	loadLevel(d)
	hitchesLevel(d)
	kindsLevel(d)
	onFileLevel(d)
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
		Hitch: "straight", FlattestNamed: fmt.Sprintf("hook/%d", i), SlackNamed: fmt.Sprintf("hook/%d to A", i), Slack: ptr(false), AngleFromHorizontalDeg: ptr(65.0), TensionN: ptr(22000.0), ShareRatio: ptr(1.0),
	})
	d.Attachments = append(d.Attachments, facts.Attachment{Record: at("attachment"), ID: "A", Named: "attachment A", Kind: "padeye", Legs: 1})
	d.Gear = append(d.Gear, facts.Gear{
		Record: at("gear"), ID: sling, Kind: "wire_rope_sling", Uses: 1,
		EyeKinds: []string{"flemish_sleeve"}, TagNamesMake: true, TagNamesDesignFactor: true,
		Tag: facts.Tag{At: "#/tag", State: "legible", DisagreesIn: ptr("none"), DesignFactor: ptr(5.0), Shows: []string{"maker", "diameter", "rated_load", "hitch", "angle_from_horizontal", "serial", "legs", "design_factor"}},
		Inspection: &facts.Inspection{
			Named: "periodic inspection", At: fmt.Sprintf("#/gear/%d/inspection", i-1), Date: "2026-05-04", Due: ptr("2027-05-04"), OverdueDays: ptr(-151.0),
		},
	})
	d.Parts = append(d.Parts, facts.Part{
		Record: at("part"), ID: sling, Kind: "wire_rope_sling", Where: "leg hook/1", Split: "settled_by_stiffness",
		JudgedBy: ptr("own_force"), LoadN: ptr(30000.0), LoadBoundN: ptr(44000.0), RatedLoadN: ptr(50000.0), Takes: "heat leaves 70 %", UsedRatio: ptr(0.6),
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
	var all []broken
	for _, topic := range [][]broken{
		breaksAngle(),
		breaksBeam(),
		breaksBend(),
		breaksBridle(),
		breaksFit(),
		breaksGrommet(),
		breaksHardware(),
		breaksHitch(),
		breaksHook(),
		breaksInspection(),
		breaksLoad(),
		breaksRegister(),
		breaksRoute(),
		breaksSling(),
		breaksTag(),
		breaksTension(),
	} {
		all = append(all, topic...)
	}
	return all
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
