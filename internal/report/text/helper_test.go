package text

import (
	"bytes"
	"sync"
	"testing"
	"time"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
	"liftlint/internal/source"
)

const name = "plans/two-legs.lift.yaml"

// linter is made once: rules take a while to load.
var linter = sync.OnceValues(func() (*lint.Linter, error) {
	day := time.Date(2026, 12, 4, 0, 0, 0, 0, time.UTC)
	return lint.New(lint.Options{Stage: "review", On: &day, Remedies: true})
})

// linted judges a plan by the rules built in.
func linted(t *testing.T, name, text string) *lint.Result {
	t.Helper()
	l, err := linter()
	if err != nil {
		t.Fatal(err)
	}
	r, err := l.Check(t.Context(), name, []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// blank is a result that holds a text for excerpts and nothing else.
func blank(t *testing.T, name, text string) *lint.Result {
	t.Helper()
	r := linted(t, name, text)
	r.State, r.Findings, r.Checked = lint.Judged, nil, nil
	return r
}

// handMade has one of everything that a report can show.
func handMade(t *testing.T) *lint.Result {
	r := blank(t, "plans/a.lift.yaml", "load:\n\tmass: 8650 kg  # 鋼 skid\n  legs: [S1, S2]\n")
	r.ID, r.Title, r.Profile, r.Stage, r.Day = "T-7", "Set the skid", "us", "review", "2026-12-04"
	flat := func(place source.Location, key, message, measured, remedy string) finding.Finding {
		return finding.Finding{
			Rule: "angle/leg_too_flat", Title: "Leg too flat", Severity: finding.Error, Grade: "below_least", Key: key, Message: message, Place: place,
			Related:   []finding.Related{{Caption: "the mass", Place: reporttest.At(r.File, 2, 8, 15)}, {Caption: "the chart", Place: reporttest.At("chart.yaml", 9, 1, 2)}},
			Measured:  &finding.Figure{Field: "angle_from_horizontal_deg", Text: measured},
			Limit:     &finding.Figure{Field: "minimum_deg", Value: 30, Text: "30 deg"},
			Remedy:    remedy,
			Citations: []finding.Citation{{Document: "ASME B30.9", Edition: "2021", Clause: "9-0.1", Basis: finding.Memory}, {Document: "site rules", Basis: finding.Company}},
		}
	}
	const longer = "a leg of at least 2.66 m bearing to bearing (now 2.61 m), the others longer in proportion"
	r.Findings = []finding.Finding{
		flat(reporttest.At(r.File, 3, 10, 12), "leg/hook/1", "leg hook/1 hangs at 28.4 deg from horizontal; at least 30 deg is asked for", "28.4 deg", longer),
		flat(reporttest.At(r.File, 3, 14, 16), "leg/hook/2", "leg hook/2 hangs at 28.4 deg from horizontal; at least 30 deg is asked for", "28.4 deg", longer),
		flat(reporttest.At(r.File, 3, 10, 12), "leg/hook/6", "leg hook/6 hangs too flat", "28.1 deg", "a leg of at least 2.7 m"),
		flat(reporttest.At(r.File, 3, 14, 16), "leg/hook/7", "leg hook/7 hangs at 28 deg from horizontal; at least 30 deg is asked for", "28 deg", ""),
		{Rule: "own/wide", Title: "Wide", Severity: finding.Warning, Key: "k", Message: "Mind the 鋼.", Place: reporttest.At(r.File, 2, 19, 20), Limit: &finding.Figure{Field: "width_m", Text: "2 m"}},
		{Rule: "own/whole", Title: "Whole file", Severity: finding.Note, Key: "k", Message: "all of it", Place: source.Location{File: r.File, Pointer: "/load"}},
		{Rule: "own/odd", Title: "Odd", Severity: "fatal", Place: source.Location{File: r.File}},
	}
	r.Checked = []lint.Checked{
		{Rule: "angle/leg_too_flat", Broken: []string{"leg/hook/1", "leg/hook/6", "leg/hook/7"}, Met: []string{"leg/hook/2"}, NotJudged: []lint.Unjudged{
			{Key: "leg/hook/3", WaitsFor: []string{"the length of S3", "the length of S4"}},
			{Key: "leg/hook/4", WaitsFor: []string{"the length of S3", "the length of S4"}},
			{Key: "leg/hook/5"},
		}},
		{Rule: "load/tilt", Met: []string{"load"}},
		{Rule: "own/indoors", DoesNotApply: "the lift is outdoors"},
		{Rule: "own/silent"},
	}
	return r
}

func written(t *testing.T, run report.Run, o Options) string {
	t.Helper()
	var b bytes.Buffer
	if err := Write(&b, run, o); err != nil {
		t.Fatal(err)
	}
	return b.String()
}
