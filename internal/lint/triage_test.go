package lint_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"liftlint/internal/config"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
)

// waived is the flat example with waivers at its end.
func waived(t *testing.T, waivers ...string) string {
	t.Helper()
	text := changed(t, example(t, "filter-vessel"))
	if len(waivers) == 0 {
		return text
	}
	return text + "waivers:\n  - " + strings.Join(waivers, "\n  - ") + "\n"
}

const (
	people = "reason: no longer leg fits under the gantry, by: lift planner, approved_by: appointed engineer"
	flat   = "{rule: angle/leg_too_flat, subject: leg/hook to A, grade: too_flat, " + people + ", until: 2026-12-31"
)

// asideOf are the keys of a rule's findings that are set aside.
func asideOf(r *lint.Result, rule string) []string {
	var keys []string
	for _, f := range of(r, rule) {
		if f.Aside != nil {
			keys = append(keys, f.Key)
		}
	}
	return keys
}

func TestWaivers(t *testing.T) {
	l := linter(t, lint.Options{})
	plain := check(t, l, waived(t))
	for _, c := range []struct {
		name, waiver string
		id, says     string // empty where the waiver holds
	}{
		{"by grade", flat + "}", "", ""},
		{"by figure", flat + ", measured: 29.3 deg, limit: 30 deg}", "", ""},
		{"of a worse figure", flat + ", measured: 28 deg, limit: 30 deg}", "", ""},
		{"on its last day", strings.Replace(flat, "2026-12-31", "2026-12-11", 1) + "}", "", ""},
		{"day after", strings.Replace(flat, "2026-12-31", "2026-12-10", 1) + "}", "waiver/expired", "held until 2026-12-10, and the plan is judged for 2026-12-11"},
		{"worse than accepted", flat + ", measured: 29.4 deg, limit: 30 deg}", "waiver/lapsed", "29.3 deg, further beyond its limit than the 29.4 deg"},
		{"stricter limit", flat + ", measured: 29.3 deg, limit: 29.5 deg}", "waiver/lapsed", "stricter than the 29.5 deg"},
		{"better grade accepted", strings.Replace(flat, "grade: too_flat", "grade: flat", 1) + "}", "waiver/lapsed", "its grade is too_flat, and flat was accepted"},
		{"no grade", strings.Replace(flat, "grade: too_flat, ", "", 1) + "}", "waiver/not_bound", "give the `grade`"},
		{"figure without limit", flat + ", measured: 29.3 deg}", "waiver/not_bound", "give the `limit`"},
		{"limit without figure", flat + ", limit: 30 deg}", "waiver/not_bound", "binds nothing"},
		{"figure of another kind", flat + ", measured: 29.3 mm, limit: 30 deg}", "waiver/not_bound", "can't be compared"},
		{"figure within its limit", flat + ", measured: 31 deg, limit: 30 deg}", "waiver/not_bound", "breaks no limit"},
		{"unknown rule", strings.Replace(flat, "leg_too_flat", "leg_to_flat", 1) + "}", "waiver/unknown", `did you mean "angle/leg_too_flat"?`},
		{"unknown key", strings.Replace(flat, "leg/hook to A", "leg/hok to A", 1) + "}", "waiver/unknown", `did you mean "leg/hook to A"?`},
		{"unknown grade", strings.Replace(flat, "grade: too_flat", "grade: too_flatt", 1) + "}", "waiver/unknown", `did you mean "too_flat"?`},
		{"forbidden", "{rule: load/over_rated_load, subject: part/hook/1/S1, grade: over, " + people + ", until: 2026-12-31}", "waiver/forbidden", "nobody may leave aside"},
		{"built in", "{rule: input/missing, subject: x, " + people + ", until: 2026-12-31}", "waiver/forbidden", "a check of liftlint itself"},
		{"nothing found", "{rule: load/tilt, subject: load, " + people + ", until: 2026-12-31}", "waiver/unused", "finds nothing on load"},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := check(t, l, waived(t, c.waiver))
			want := []string{"leg/hook/1"}
			if c.id != "" {
				want = nil
			}
			if got := asideOf(r, "angle/leg_too_flat"); !slices.Equal(got, want) {
				t.Errorf("set aside: %v", got)
			}
			var said []finding.Finding
			for _, f := range r.Findings {
				if strings.HasPrefix(f.Rule, "waiver/") {
					said = append(said, f)
				}
			}
			if len(r.Findings) != len(plain.Findings)+len(said) {
				t.Errorf("%d findings, and %d without the waiver", len(r.Findings), len(plain.Findings))
			}
			switch {
			case c.id == "" && len(said) == 0:
			case len(said) != 1 || said[0].Rule != c.id || !strings.Contains(said[0].Message, c.says):
				t.Errorf("%v", said)
			case !strings.Contains(r.Line(said[0].Place.Range.From.Line), "  - {rule: "):
				t.Errorf("it stands at line %d", said[0].Place.Range.From.Line)
			}
		})
	}
}

func TestWaiversOfOneFinding(t *testing.T) {
	r := check(t, linter(t, lint.Options{}), waived(t, flat+"}", flat+", measured: 29.3 deg, limit: 30 deg}"))
	if got := of(r, "waiver/twice"); len(got) != 2 || len(asideOf(r, "angle/leg_too_flat")) != 0 {
		t.Errorf("%v", got)
	}
}

// TestWaiverNeedsADay: without a day to judge for, none holds.
func TestWaiverNeedsADay(t *testing.T) {
	text := strings.Replace(waived(t, flat+"}"), "  date: 2026-12-11\n", "", 1)
	if text == waived(t, flat+"}") {
		t.Fatal("the example has no day")
	}
	if r := check(t, linter(t, lint.Options{}), text); len(of(r, "waiver/expired")) != 1 || len(asideOf(r, "angle/leg_too_flat")) != 0 {
		t.Errorf("%s", rules(r))
	}
	day := time.Date(2027, 1, 1, 0, 0, 0, 0, time.UTC)
	if r := check(t, linter(t, lint.Options{On: &day}), waived(t, flat+"}")); len(of(r, "waiver/expired")) != 1 {
		t.Errorf("%s", rules(r))
	}
}

// TestWaiverIsWhole: what a waiver has to say is asked for like any other key.
func TestWaiverIsWhole(t *testing.T) {
	l := linter(t, lint.Options{})
	for _, c := range [][2]string{
		{"reason: no longer leg fits under the gantry, ", "plan/missing_key"},
		{", approved_by: appointed engineer", "plan/missing_key"},
		{"by: lift planner, ", "plan/missing_key"},
		{", until: 2026-12-31", "plan/missing_key"},
		{"no longer leg fits under the gantry", "plan/bad_text"},
	} {
		with := ""
		if c[1] == "plan/bad_text" {
			with = `" "`
		}
		r := check(t, l, waived(t, strings.Replace(flat, c[0], with, 1)+"}"))
		if r.State != lint.NotValid || len(of(r, c[1])) != 1 {
			t.Errorf("without %q: %s", c[0], rules(r))
		}
	}
}

// TestWaiverTextsAreTold once, and of a bare number at once what it lacks.
func TestWaiverTextsAreTold(t *testing.T) {
	l := linter(t, lint.Options{})
	for waiver, want := range map[string]string{
		strings.Replace(flat, "no longer leg fits under the gantry", `""`, 1) + "}": "`reason` of entry 1 of `waivers`: the text is empty; write something",
		strings.Replace(flat, "by: lift planner", `by: ""`, 1) + "}":                "`by` of entry 1 of `waivers`: the text is empty; write something",
		flat + ", measured: 29.3, limit: 30 deg}":                                   "`measured` of entry 1 of `waivers`: `29.3` is a number; a figure with its unit is asked for, as the report prints it, such as `29.3 deg`",
	} {
		if r := check(t, l, waived(t, waiver)); len(r.Findings) != 1 || r.Findings[0].Message != want {
			t.Errorf("%v, not %q", r.Findings, want)
		}
	}
}

// TestCompanyForbidsWaivers of rules that may be waived elsewhere.
func TestCompanyForbidsWaivers(t *testing.T) {
	o := lint.Options{Config: config.Config{Files: []string{"x"}, Layers: []policy.Layer{{Name: "company/liftlint.yaml", NotWaivable: []string{"angle/leg_too_flat"}}}}}
	r := check(t, linter(t, o), waived(t, flat+"}"))
	if got := of(r, "waiver/forbidden"); len(got) != 1 || !strings.Contains(got[0].Message, "company/liftlint.yaml forbids it") || len(asideOf(r, "angle/leg_too_flat")) != 0 {
		t.Errorf("%v", got)
	}
}
