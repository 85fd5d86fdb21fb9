package policy_test

import (
	"context"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/facts"
	"liftlint/internal/finding"
	"liftlint/internal/policy"
)

// provedBy tests beams with what each profile asks for: 1.25 times their rated load
// and no more, or 1.5 times.
func provedBy(profile string, d *facts.Document) *facts.Document {
	if profile == "eu" {
		for i := range d.Beams {
			d.Beams[i].ProofTestRatio = ptr(1.5)
		}
		for i := range d.OnFile {
			d.OnFile[i].ProofRatio = ptr(1.5)
		}
	}
	return d
}

func TestALevelLiftMeetsEveryRule(t *testing.T) {
	for _, name := range []string{"us", "eu"} {
		for id, v := range judge(t, builtin(t, name), provedBy(name, level())) {
			if v.DoesNotApply != "" || len(v.Outcomes) == 0 {
				t.Errorf("%s: %s does not apply: %s", name, id, v.DoesNotApply)
			}
			for _, o := range v.Outcomes {
				if o.State != policy.Met {
					t.Errorf("%s: %s is %s with %s, missing %v", name, o.Subject.Key, o.State, id, o.Missing)
				}
			}
		}
	}
}

func TestEveryRuleAtEveryGrade(t *testing.T) {
	p := builtin(t, "us")
	grades := map[string]bool{}
	for _, b := range breaks() {
		t.Run(b.rule+"/"+b.grade, func(t *testing.T) {
			d := level()
			b.change(d)
			v := judge(t, p, d)[b.rule]
			o := v.Outcomes[0]
			if o.State != policy.Broken {
				t.Fatalf("%s is %s", o.Subject.Key, o.State)
			}
			if o.Grade == nil != (b.grade == "") || o.Grade != nil && o.Grade.Name != b.grade {
				t.Errorf("grade %v, want %q", o.Grade, b.grade)
			}
			if diff := cmp.Diff(b.message, v.Rule.Message(o, mark)); diff != "" {
				t.Error(diff)
			}
			if got := v.Rule.PlaceOf(o); got != b.place {
				t.Errorf("place %s, want %s", got, b.place)
			}
			if _, x, ok := v.Rule.MeasuredOf(o); ok != (b.measured != 0) || x != b.measured {
				t.Errorf("measured %v %v, want %v", x, ok, b.measured)
			}
			for _, other := range v.Outcomes[1:] {
				if other.State != policy.Met {
					t.Errorf("%s is %s", other.Subject.Key, other.State)
				}
			}
		})
		grades[b.rule+"/"+b.grade] = true
	}
	for _, r := range p.Rules() {
		for _, g := range r.Grades {
			if !grades[r.ID+"/"+g.Name] {
				t.Errorf("grade %s of %s is not broken by any case", g.Name, r.ID)
			}
		}
		if len(r.Grades) == 0 && !grades[r.ID+"/"] {
			t.Errorf("%s is not broken by any case", r.ID)
		}
	}
}

func TestOtherRulesStayMet(t *testing.T) {
	p := builtin(t, "us")
	// A slack leg has no angle; a load that turns over has no tilt to judge.
	d := level()
	d.Legs[0].Slack, d.Legs[0].AngleFromHorizontalDeg = ptr(true), nil
	d.Loads = d.Loads[:1]
	d.Loads[0].Hangs, d.Loads[0].TiltDeg = ptr("overturns"), nil
	got := judge(t, p, d)
	if n := len(got["angle/leg_too_flat"].Outcomes); n != 3 {
		t.Errorf("%d legs judged for their angle, want the 3 that carry", n)
	}
	if v := got["load/tilt"]; v.DoesNotApply != "there are no loads with hangs steady or rocks" {
		t.Errorf("tilt: %q, %v", v.DoesNotApply, v.Outcomes)
	}
}

func TestWhatIsNotKnownIsNotJudged(t *testing.T) {
	d := level()
	d.Gear[0].Inspection = nil
	d.Gear[1].Inspection.OverdueDays = nil
	d.Legs[2].Slack = nil
	d.Parts[3].LoadBoundN, d.Parts[3].RatedLoadN = nil, nil
	got := judge(t, builtin(t, "us"), d)
	for _, c := range []struct {
		rule    string
		i       int
		missing []string
	}{
		{"inspection/overdue", 0, []string{"inspection"}},
		{"inspection/overdue", 1, []string{"inspection.overdue_days"}},
		{"angle/leg_too_flat", 2, []string{"slack"}},
		{"tension/leg_slack", 2, []string{"slack"}},
		{"load/bound_over_rated_load", 3, []string{"load_bound_n", "rated_load_n"}},
	} {
		o := got[c.rule].Outcomes[c.i]
		if diff := cmp.Diff(c.missing, o.Missing); o.State != policy.NotJudged || diff != "" {
			t.Errorf("%s of %s: %s %s", c.rule, o.Subject.Key, o.State, diff)
		}
	}
}

// A finding stands although another body could not be judged, and says what
// might make it worse.
func TestBrokenOutweighsMissing(t *testing.T) {
	d := level()
	d.Fits[0].EyeIncludedAngleDeg, d.Fits[0].WidthOverLengthRatio = ptr(40.0), nil
	d.Fits[1].EyeIncludedAngleDeg, d.Fits[1].WidthOverLengthRatio = nil, ptr(0.7)
	got := judge(t, builtin(t, "us"), d)["fit/eye_over_body"].Outcomes
	if o := got[0]; o.State != policy.Broken || o.Grade.Name != "spread" || len(o.Missing) != 1 {
		t.Errorf("%s %v %v", o.State, o.Grade, o.Missing)
	}
	if o := got[1]; o.State != policy.Broken || o.Grade.Name != "too_wide" || len(o.Missing) != 0 {
		t.Errorf("%s %v %v", o.State, o.Grade, o.Missing)
	}
}

func TestProfilesDiffer(t *testing.T) {
	d := level()
	d.Gear[0].Tag.Shows = []string{"maker", "rated_load", "serial"}
	if o := judge(t, builtin(t, "eu"), d)["tag/missing_or_incomplete"].Outcomes[0]; o.State != policy.Met {
		t.Errorf("eu: %s, lacking %v", o.State, o.Names)
	}
	o := judge(t, builtin(t, "us"), d)["tag/missing_or_incomplete"].Outcomes[0]
	if want := []string{"diameter", "hitch"}; !cmp.Equal(o.Names, want) {
		t.Errorf("us: lacking %v, want %v", o.Names, want)
	}
}

// A field that a tag has to show is never called useful as well, or one that
// is missing would be found twice.
func TestNoTagFieldIsBothRequiredAndUseful(t *testing.T) {
	for _, name := range []string{"us", "eu"} {
		d := level()
		d.Gear[0].Tag.Shows = nil
		got := judge(t, builtin(t, name), d)
		required := got["tag/missing_or_incomplete"].Outcomes[0].Names
		useful := got["tag/useful_fields_missing"].Outcomes[0].Names
		for _, field := range useful {
			if slices.Contains(required, field) {
				t.Errorf("%s: %s is found missing twice", name, field)
			}
		}
		if len(required) == 0 || len(useful) == 0 {
			t.Errorf("%s: required %v, useful %v", name, required, useful)
		}
	}
}

// An offset that tilts the load is told by its tilt alone.
func TestOffsetIsToldOnce(t *testing.T) {
	p := builtin(t, "us")
	for tilt, want := range map[float64][2]int{5: {1, 0}, 5.1: {0, 1}} {
		d := level()
		d.Loads[0].TiltDeg, d.Loads[0].PlumbOffsetM = ptr(tilt), ptr(0.3)
		var got [2]int
		for i, id := range []string{"load/hook_not_plumb", "load/tilt"} {
			for _, o := range judge(t, p, d)[id].Outcomes {
				if o.State == policy.Broken {
					got[i]++
				}
			}
		}
		if got != want {
			t.Errorf("tilted by %v: %v findings of offset and tilt, want %v", tilt, got, want)
		}
	}
}

func TestSeverityByStage(t *testing.T) {
	p := builtin(t, "us")
	d := level()
	d.Gear[0].Tag.State = "not_recorded"
	v := judge(t, p, d)["tag/missing_or_incomplete"]
	for stage, want := range map[string]finding.Severity{policy.Draft: finding.Note, policy.Review: finding.Error, "unheard": finding.Error} {
		if got := v.Rule.SeverityOf(v.Outcomes[0], stage); got != want {
			t.Errorf("%s: %s, want %s", stage, got, want)
		}
	}
	if v.Rule.AsksFrom(policy.Draft) || !v.Rule.AsksFrom(policy.Prelift) {
		t.Error("missing inputs are findings from review on")
	}
}

func TestDocumentsThatCannotBeJudged(t *testing.T) {
	p := builtin(t, "us")
	for name, change := range map[string]func(*facts.Document){
		"one lift is judged at a time, found 0": func(d *facts.Document) { d.Lifts = nil },
		"is no stage of a lift":                 func(d *facts.Document) { d.Lifts[0].Stage = "later" },
		"is not unique":                         func(d *facts.Document) { d.Legs[1].Key = d.Legs[0].Key },
		"is not a finite number":                func(d *facts.Document) { d.Legs[0].TensionN = ptr(inf()) },
	} {
		d := level()
		change(d)
		v, err := p.Judge(context.Background(), d)
		if err == nil || !strings.Contains(err.Error(), name) || v != nil {
			t.Errorf("%v, want %q", err, name)
		}
	}
}

func inf() float64 {
	zero := 0.0
	return 1 / zero
}

func TestJudgeIsSafeForConcurrentUse(t *testing.T) {
	p := builtin(t, "us")
	var wg sync.WaitGroup
	for i := range 16 {
		wg.Go(func() {
			b := breaks()[i]
			d := level()
			b.change(d)
			list, err := p.Judge(context.Background(), d)
			if err != nil {
				t.Error(err)
			}
			for _, v := range list {
				if v.Rule.ID == b.rule && v.Outcomes[0].State != policy.Broken {
					t.Errorf("%s is %s", b.rule, v.Outcomes[0].State)
				}
			}
		})
	}
	wg.Wait()
}
