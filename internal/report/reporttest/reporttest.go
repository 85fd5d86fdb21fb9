// Package reporttest holds what the tests of every report format put to it:
// real results, one of everything that can be reported, and hostile text.
package reporttest

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/report"
	"liftlint/internal/source"
)

// Linter judges by the rules built in. It is made once: rules take a while to
// load.
var Linter = sync.OnceValues(func() (*lint.Linter, error) {
	return lint.New(lint.Options{Stage: policy.Review, Remedies: true})
})

// Judge judges a plan by the rules built in.
func Judge(t testing.TB, name, text string) *lint.Result {
	t.Helper()
	l, err := Linter()
	if err != nil {
		t.Fatal(err)
	}
	r, err := l.Check(context.Background(), name, []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// Example is the text of a plan shown to users. root is the way to the
// repository from the test's folder.
func Example(t testing.TB, root, name string) string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(root, "examples", name))
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// Examples are all plans shown to users, judged.
func Examples(t testing.TB, root string) []*lint.Result {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(root, "examples", "*.lift.yaml"))
	if err != nil || len(files) == 0 {
		t.Fatalf("there are no examples: %v", err)
	}
	slices.Sort(files)
	var list []*lint.Result
	for _, f := range files {
		name := filepath.Base(f)
		list = append(list, Judge(t, "examples/"+name, Example(t, root, name)))
	}
	return list
}

// At is a place in one line of a file.
func At(file string, line, from, to int) source.Location {
	return source.Location{File: file, Pointer: "/x", Range: source.Range{
		From: source.Position{Line: line, Column: from},
		To:   source.Position{Line: line, Column: to},
	}}
}

// Everything is a run in which all happens that a report can tell: findings of
// each severity, places in other files and in none, subjects not judged, a plan
// that is not valid, one that can't be read, a failure, and what a run over a change
// leaves out.
func Everything(t testing.TB) report.Run {
	notValid := Judge(t, "plans/faulty.lift.yaml", "liftlint: 1\nlift: {id: T-2, title: Bare mass}\nload:\n  mass: 1000\n")
	return report.Run{
		Results:  []*lint.Result{HandMade(t), notValid, lint.Unreadable("plans/gone.lift.yaml", errors.New("permission denied"))},
		Failures: []string{"plans/b.lift.yaml: rule own/slow: stopped after 1 s\n  rule.rego:12: here\n"},
		Lost:     []string{"plans/b.lift.yaml"}, Unchanged: 4, Gone: []string{"plans/before.lift.yaml"}, GoneConfigs: []string{"plans/liftlint.yaml"}, NotCompared: []string{"plans/broken.lift.yaml"},
	}
}

// HandMade is a judged plan with findings of each kind.
func HandMade(t testing.TB) *lint.Result {
	const file = "plans/a.lift.yaml"
	r := Judge(t, file, "load:\n\tmass: 8650 kg  # 鋼 skid\n  legs: [S1, S2]\n")
	r.State, r.ID, r.Title, r.Profile, r.Stage, r.Day = lint.Judged, "T-7", "Set the skid", "us", "review", "2026-12-04"
	r.Overrides = []policy.Override{{Rule: "angle/leg_too_flat", What: "minimum_deg", From: "liftlint.yaml", Was: "30", Is: "45"}}
	flat := finding.Finding{
		Rule: "angle/leg_too_flat", Title: "Leg too flat", Severity: finding.Error, Grade: "too_flat", Key: "leg/hook/1",
		Message: "leg hook/1 hangs at 28.4 deg from horizontal; at least 30 deg is asked for", Place: At(file, 3, 10, 12),
		Related:   []finding.Related{{Caption: "the mass", Place: At(file, 2, 8, 15)}, {Caption: "the chart", Place: At("charts/crane.yaml", 9, 1, 2)}},
		Measured:  &finding.Figure{Field: "angle_from_horizontal_deg", Value: 28.4, Text: "28.4 deg"},
		Limit:     &finding.Figure{Field: "minimum_deg", Value: 30, Text: "30 deg"},
		Remedy:    "a leg of at least 2.66 m bearing to bearing (now 2.61 m)",
		Citations: []finding.Citation{{Document: "ASME B30.9", Edition: "2021", Clause: "9-0.1", Basis: finding.Memory}, {Document: "site rules", Basis: finding.Company}},
	}
	second := flat
	second.Key, second.Message, second.Place, second.Remedy = "leg/hook/2", "leg hook/2 hangs at 28.1 deg from horizontal; at least 30 deg is asked for", At(file, 3, 14, 16), ""
	third := flat
	third.Key, third.Message, third.Place = "leg/hook/3", "leg hook/3 hangs at 28.9 deg from horizontal; at least 30 deg is asked for", At(file, 3, 14, 16)
	third.Aside = &finding.Aside{Means: finding.ByWaiver, Reason: "no longer leg fits under the gantry", By: "lift planner", ApprovedBy: "appointed engineer", Until: "2026-12-31", Place: At(file, 3, 3, 7)}
	known := finding.Finding{Rule: "own/wide", Title: "Wide", Severity: finding.Warning, Key: "k2", Message: "mind the width", Place: At(file, 2, 2, 6),
		Aside: &finding.Aside{Means: finding.ByBaseline, Place: At("known.json", 4, 3, 8)}}
	wide := source.Location{File: file, Pointer: "/load", Range: source.Range{From: source.Position{Line: 1, Column: 1}, To: source.Position{Line: 3, Column: 17}}}
	r.Findings = []finding.Finding{
		flat, second, third, known,
		{Rule: "own/wide", Title: "Wide", Severity: finding.Warning, Key: "k", Message: "mind the 鋼", Place: wide, Limit: &finding.Figure{Field: "width_m", Value: 2, Text: "2 m"}, Citations: []finding.Citation{{Document: "common practice", Basis: finding.Practice}}},
		{Rule: "own/whole", Title: "Whole file", Severity: finding.Note, Key: "k", Message: "all of it", Place: source.Location{File: file, Pointer: "/load"}},
		{Rule: "own/rule", Title: "Elsewhere", Severity: finding.Warning, Key: "k", Message: "the register says so", Place: At("gear/a register.yaml", 4, 3, 9)},
		{Rule: "own/odd", Title: "Odd", Severity: "fatal", Place: source.Location{File: file}},
	}
	r.Checked = []lint.Checked{
		{Rule: "angle/leg_too_flat", Title: "Leg too flat", Broken: []string{"leg/hook/1", "leg/hook/2", "leg/hook/3"}, Met: []string{"leg/hook/6"}, NotJudged: []lint.Unjudged{
			{Key: "leg/hook/4", WaitsFor: []string{"the length of S3 is not given", "the length of S4 is not given"}},
			{Key: "leg/hook/5"},
		}},
		{Rule: "load/tilt", Title: "Load tilted", Met: []string{"load"}},
		{Rule: "own/indoors", Title: "Indoors", DoesNotApply: "the lift is outdoors"},
		{Rule: "own/odd", Title: "Odd", Broken: []string{""}},
		{Rule: "own/rule", Title: "Elsewhere", Broken: []string{"k"}},
		{Rule: "own/silent", Title: "Silent"},
		{Rule: "own/waits", Title: "Waits", NotJudged: []lint.Unjudged{{Key: "load", WaitsFor: []string{"the mass is not given"}}}},
		{Rule: "own/whole", Title: "Whole file", Broken: []string{"k"}},
		{Rule: "own/wide", Title: "Wide", Broken: []string{"k", "k2"}},
	}
	return r
}

// Golden compares with a file in testdata. Set LIFTLINT_UPDATE=1 to write it
// anew.
func Golden(t *testing.T, name, got string) {
	t.Helper()
	file := filepath.Join("testdata", name)
	if os.Getenv("LIFTLINT_UPDATE") == "1" {
		if err := errors.Join(os.MkdirAll("testdata", 0o755), os.WriteFile(file, []byte(got), 0o644)); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(string(want), got); d != "" {
		t.Errorf("%s differs (- wanted, + got); LIFTLINT_UPDATE=1 writes it anew\n%s", file, d)
	}
}

// NeverSaysSafe fails where a report says more than was checked.
func NeverSaysSafe(t *testing.T, text string) {
	t.Helper()
	text = strings.NewReplacer("approved by", "", "approved_by", "").Replace(strings.ToLower(text)) // of a waiver, not of the lift
	for _, word := range []string{"safe", "passed", "approved", "compliant"} {
		if strings.Contains(text, word) {
			t.Errorf("the report says %q", word)
		}
	}
}
