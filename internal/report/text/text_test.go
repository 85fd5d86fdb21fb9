package text

import (
	"errors"
	"io"
	"strings"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

// twoLegs is a small plan that leaves much out: the hook's width, the slings'
// eyes and inspections, the day, and the maker on the tag of S2.
const twoLegs = `liftlint: 1
lift: {id: T-1, title: Two legs}
load:
  mass: 1000 kg
  mass_known_by: weighed
  center_of_gravity: {x: 1 m, y: 0.5 m, z: 0.2 m}
  attachments:
    - {id: A, kind: padeye, x: 0 m, y: 0.5 m, z: 1 m, rated_load: 2 t}
    - {id: B, kind: padeye, x: 2 m, y: 0.5 m, z: 1 m, rated_load: 2 t}
gear:
  - {id: S1, kind: wire_rope_sling, core: iwrc, diameter: 14 mm, length: 2.5 m, tag: {condition: legible, maker: loft, diameter: 14 mm, rated_load: 2.25 t, hitch: vertical, angle_from_horizontal: 90 deg}}
  - {id: S2, kind: wire_rope_sling, core: iwrc, diameter: 14 mm, length: 2.5 m, tag: {condition: legible, diameter: 14 mm, rated_load: 2.25 t, hitch: vertical, angle_from_horizontal: 90 deg}}
rigging:
  - from: hook
    legs:
      - {down: [S1], end: {kind: to, at: A}}
      - {down: [S2], end: {kind: to, at: B}}
`

const faulty = "liftlint: 1\nlift: {id: T-2, title: Bare mass}\nload:\n  mass: 1000\n"

func everything(t *testing.T) report.Run {
	unread := lint.Unreadable("plans/gone.lift.yaml", errors.New("permission denied"))
	notValid := linted(t, "plans/faulty.lift.yaml", faulty)
	return report.Run{
		Results:  []*lint.Result{handMade(t), notValid, unread},
		Failures: []string{"plans/b.lift.yaml: rule own/slow: stopped after 1 s\n  rule.rego:12: here\n"},
		FailOn:   finding.Error,
	}
}

func TestGoldens(t *testing.T) {
	clean := handMade(t)
	clean.Findings, clean.Day = nil, ""
	clean.Checked = []lint.Checked{{Rule: "load/tilt", Met: []string{"load"}}}
	for file, c := range map[string]struct {
		run report.Run
		o   Options
	}{
		"everything.txt": {everything(t), Options{}},
		"color.txt":      {everything(t), Options{Color: true}},
		"narrow.txt":     {everything(t), Options{Width: 50}},
		"clean.txt":      {report.Run{Results: []*lint.Result{clean}}, Options{}},
		"checks.txt":     {report.Run{Results: []*lint.Result{handMade(t)}}, Options{ListChecks: true}},
		"nothing.txt":    {report.Run{}, Options{}},
	} {
		t.Run(file, func(t *testing.T) { reporttest.Golden(t, file, written(t, c.run, c.o)) })
	}
}

func TestNothingIsLost(t *testing.T) {
	run := everything(t)
	run.Results = append(run.Results, linted(t, name, twoLegs))
	got := written(t, run, Options{Width: 1 << 20, ListChecks: true})
	want := []string{"COULD NOT CHECK", "stopped after 1 s", "rule.rego:12", "NOT VALID", "NOT READ"}
	for _, r := range run.Results {
		want = append(want, shownOf(r)...)
		want = append(want, rulesOf(r, true)...)
	}
	for _, w := range want {
		if !strings.Contains(got, w) {
			t.Errorf("the report does not show %q", w)
		}
	}
	if strings.Count(got, report.Caution) != 1 {
		t.Error("the caution is not there exactly once")
	}
	if !strings.HasPrefix(got, "COULD NOT CHECK") {
		t.Error("failures do not come first")
	}
}

// shownOf lists what a report has to show of a result, its rules apart. What
// findings of one kind share is shown with the first.
func shownOf(r *lint.Result) []string {
	want := []string{r.File, r.ID, r.Title}
	for _, g := range report.Grouped(r.Findings) {
		first := g[0]
		want = append(want, first.Title, report.Sources(first.Citations))
		if first.Rule != report.InputMissing {
			want = append(want, report.RuleOf(g))
		}
		for _, c := range first.Citations {
			want = append(want, c.String())
		}
		for i, f := range g {
			want = append(want, report.Place(f.Place), f.Remedy, f.Rule, f.Grade)
			if f.Rule == report.InputMissing { // listed together, by their places
				want = append(want, report.WithoutRules(f.Message)[1:])
				continue
			}
			want = append(want, f.Key, report.Sentence(f.Message))
			if i > 0 {
				want = append(want, "  also          "+report.Place(f.Place)+"\n                "+report.Sentence(f.Message)+"\n")
			}
			for _, x := range []*finding.Figure{f.Measured, f.Limit} {
				if x != nil {
					want = append(want, x.Text)
				}
			}
			if i == 0 || r.State != lint.Judged {
				for _, x := range f.Related {
					want = append(want, x.Caption, report.Place(x.Place))
				}
			}
		}
	}
	return want
}

// rulesOf lists what a report has to show of the account: all rules, or those
// that are not to be left out by default.
func rulesOf(r *lint.Result, all bool) []string {
	var want []string
	for _, c := range r.Checked {
		_, rule, _ := strings.Cut(c.Rule, "/")
		if all || len(c.Broken) > 0 || silent(c) != nil {
			want = append(want, rule)
		}
		if n := len(c.NotJudged); n > 0 {
			want = append(want, rule+" ("+strings.Join(share(n, c), "")+")")
		}
	}
	return want
}

// TestShortAccount: the default leaves out the names of rules that are met or do
// not apply, says so, and nothing else.
func TestShortAccount(t *testing.T) {
	real := linted(t, name, twoLegs)
	got := written(t, report.Run{Results: []*lint.Result{handMade(t), real}}, Options{Width: 1 << 20})
	for _, r := range []*lint.Result{handMade(t), real} {
		for _, w := range append(shownOf(r), rulesOf(r, false)...) {
			if !strings.Contains(got, w) {
				t.Errorf("the report does not show %q", w)
			}
		}
	}
	if strings.Contains(got, "indoors") || strings.Contains(got, "\n  met ") || strings.Count(got, "--list-checks") != 2 {
		t.Errorf("rules that are met or do not apply:\n%s", got)
	}
}

// TestOrderOfParts: what a plan comes to and how the load hangs stand ahead of
// the findings, the account behind them, and the outcome ends the report.
func TestOrderOfParts(t *testing.T) {
	got := written(t, report.Run{Results: []*lint.Result{linted(t, name, twoLegs)}}, Options{})
	outcome := "Outcome: there are findings of severity error or worse (exit code 1).\n"
	last := -1
	for _, part := range []string{"Plan: ", "\n  " + outcome, "\nHow it hangs: ", "\nERROR  ", "\nWhat was checked: ", "\n" + outcome, "\nCaution: "} {
		at := strings.Index(got, part)
		if at <= last {
			t.Errorf("%q does not stand behind what it is to follow:\n%s", part, got)
		}
		last = at
	}
}

// TestOutcomeOfEachPlan: of several plans each has an outcome of its own, and
// the exit code is that of all.
func TestOutcomeOfEachPlan(t *testing.T) {
	clean := handMade(t)
	clean.Findings, clean.Checked = nil, []lint.Checked{{Rule: "load/tilt", Met: []string{"load"}}}
	got := written(t, report.Run{Results: []*lint.Result{clean, handMade(t)}}, Options{})
	for _, w := range []string{
		"\n  Outcome: nothing of severity error or worse was found by the checks that were made.\n",
		"\n  Outcome: there are findings of severity error or worse.\n",
		"\nOutcome: there are findings of severity error or worse (exit code 1).\n",
	} {
		if strings.Count(got, w) != 1 {
			t.Errorf("%q is not there once:\n%s", w, got)
		}
	}
}

// TestRealPlan makes sure that the plan with gaps shows what it is there for.
func TestRealPlan(t *testing.T) {
	got := written(t, report.Run{Results: []*lint.Result{linted(t, name, twoLegs)}}, Options{ListChecks: true})
	for _, w := range []string{"T-1: Two legs", "for 2026-12-04", "tag/missing_or_incomplete, grade incomplete, on gear/S2", "over_rated_load (", "  met  ", "  not judged  "} {
		if !strings.Contains(got, w) {
			t.Errorf("the report does not show %q:\n%s", w, got)
		}
	}
}

// TestNeverSaysSafe holds for every kind of result, clean ones before all.
func TestNeverSaysSafe(t *testing.T) {
	clean := handMade(t)
	clean.Findings = nil
	for _, run := range []report.Run{everything(t), {Results: []*lint.Result{clean}}, {}} {
		for _, word := range []string{"safe", "passed", "approved", "compliant"} {
			if strings.Contains(strings.ToLower(written(t, run, Options{})), word) {
				t.Errorf("the report says %q", word)
			}
		}
	}
}

func TestUnknownsAreLoud(t *testing.T) {
	for name, r := range map[string]*lint.Result{
		"no result":   nil,
		"no rules":    {File: "a", State: lint.Judged},
		"odd state":   {File: "a", State: "done", Checked: []lint.Checked{{Rule: "x", Met: []string{"y"}}}},
		"empty state": {File: "a"},
	} {
		got := written(t, report.Run{Results: []*lint.Result{r}}, Options{})
		if !strings.Contains(got, "NOT CHECKED") || !strings.Contains(got, "exit code 3") {
			t.Errorf("%s:\n%s", name, got)
		}
	}
}

func TestWriterFails(t *testing.T) {
	r, w := io.Pipe()
	r.Close()
	if err := Write(w, report.Run{}, Options{}); !errors.Is(err, io.ErrClosedPipe) {
		t.Errorf("got %v", err)
	}
}
