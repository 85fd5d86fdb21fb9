package text

import (
	"errors"
	"io"
	"strings"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
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
		"nothing.txt":    {report.Run{}, Options{}},
	} {
		t.Run(file, func(t *testing.T) { golden(t, file, written(t, c.run, c.o)) })
	}
}

func TestNothingIsLost(t *testing.T) {
	run := everything(t)
	run.Results = append(run.Results, linted(t, name, twoLegs))
	got := written(t, run, Options{Width: 1 << 20})
	want := []string{"COULD NOT CHECK", "stopped after 1 s", "rule.rego:12", "NOT VALID", "NOT READ"}
	for _, r := range run.Results {
		want = append(want, shownOf(r)...)
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

// shownOf lists what a report has to show of a result.
func shownOf(r *lint.Result) []string {
	want := []string{r.File, r.ID, r.Title}
	for _, f := range r.Findings {
		want = append(want, f.Title, place(f.Place), f.Remedy, f.Rule, f.Grade)
		if f.Rule != inputMissing { // listed together, by their places
			want = append(want, f.Key, sentence(f.Message))
		} else {
			want = append(want, withoutRules(f.Message)[1:])
		}
		for _, x := range f.Related {
			want = append(want, x.Caption, place(x.Place))
		}
		for _, c := range f.Citations {
			want = append(want, c.String())
		}
	}
	for _, c := range r.Checked {
		_, rule, _ := strings.Cut(c.Rule, "/")
		want = append(want, rule)
		if n := len(c.NotJudged); n > 0 {
			want = append(want, rule+" ("+strings.Join(share(n, c), "")+")")
		}
	}
	return want
}

// TestRealPlan makes sure that the plan with gaps shows what it is there for.
func TestRealPlan(t *testing.T) {
	got := written(t, report.Run{Results: []*lint.Result{linted(t, name, twoLegs)}}, Options{})
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
