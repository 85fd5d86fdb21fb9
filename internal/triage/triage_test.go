package triage

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"liftlint/internal/finding"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
	"liftlint/internal/source"
)

func lastDay(text string) time.Time {
	t, err := time.Parse(time.DateOnly, text)
	if err != nil {
		panic(err)
	}
	return t
}

// plain is a case of three rules: one with grades, one without, and one that
// nobody may waive.
func plain() Case {
	day := lastDay("2026-12-04")
	return Case{
		Rules: []Rule{
			{ID: "a/graded", FormerIDs: []string{"a/once"}, Grades: []string{"bad", "less"}, Subjects: []string{"k1", "k2"}},
			{ID: "a/plain", Subjects: []string{"k1", "k2"}},
			{ID: "a/never", Forbidden: "never", Subjects: []string{"k1", "k2"}},
		},
		Keys:   []string{"k1", "k2", "k3"},
		Day:    &day,
		Locate: located,
		Print:  func(_ string, v float64) string { return figure(v).Text },
	}
}

// located gives each waiver a line of its own.
func located(pointer string) source.Location {
	n := 0
	_, _ = fmt.Sscanf(pointer, "/waivers/%d", &n)
	at := source.Position{Line: n + 1, Column: 1}
	return source.Location{File: "p", Pointer: pointer, Range: source.Range{From: at, To: at}}
}

func drawFinding(t *rapid.T, i int) finding.Finding {
	f := finding.Finding{
		Rule:     rapid.SampledFrom([]string{"a/graded", "a/plain", "a/never", "input/missing", "a/stranger"}).Draw(t, "rule"),
		Severity: rapid.SampledFrom(finding.Severities()).Draw(t, "severity"),
		Key:      rapid.SampledFrom([]string{"k1", "k2"}).Draw(t, "key"),
		Message:  fmt.Sprint(i),
	}
	if f.Rule == "a/graded" {
		f.Grade = rapid.SampledFrom([]string{"bad", "less"}).Draw(t, "grade")
	}
	if rapid.Bool().Draw(t, "has figures") {
		f.Measured, f.Limit = figure(rapid.Float64Range(0, 90).Draw(t, "measured")), figure(rapid.Float64Range(0, 90).Draw(t, "limit"))
	}
	return f
}

func figure(v float64) *finding.Figure {
	text, _ := quantity.FormatSuffix("angle_deg", v, quantity.Metric)
	return &finding.Figure{Field: "angle_deg", Value: v, Text: text}
}

func drawWaiver(t *rapid.T) plan.Waiver {
	some := func(what string, list ...string) string { return rapid.SampledFrom(list).Draw(t, what) }
	return plan.Waiver{
		Pointer: "/waivers/0", Reason: "r", By: "b", ApprovedBy: "c",
		Rule:     some("waived rule", "a/graded", "a/once", "a/plain", "a/never", "input/missing", "a/unknown"),
		Subject:  some("subject", "k1", "k2", "k3", "k4"),
		Grade:    some("accepted grade", "", "bad", "less", "none"),
		Measured: some("accepted figure", "", "20 deg", "60 deg", "60 m"),
		Limit:    some("accepted limit", "", "30 deg", "45 deg"),
		Until:    lastDay(some("until", "2026-12-03", "2026-12-04", "2027-01-01")),
	}
}

func drawCase(t *rapid.T) ([]finding.Finding, []plan.Waiver) {
	var fs []finding.Finding
	for i := range rapid.IntRange(0, 8).Draw(t, "findings") {
		fs = append(fs, drawFinding(t, i))
	}
	ws := rapid.SliceOfN(rapid.Custom(drawWaiver), 0, 4).Draw(t, "waivers")
	for i := range ws {
		if len(fs) > 0 && rapid.Bool().Draw(t, "meant for a finding") {
			f := rapid.SampledFrom(fs).Draw(t, "finding")
			ws[i].Rule, ws[i].Subject, ws[i].Grade, ws[i].Measured, ws[i].Limit = f.Rule, f.Key, f.Grade, "", ""
		}
	}
	return fs, ws
}

// TestNothingIsDropped: every finding comes out as it went in but for being set
// aside, which no finding of the engine and none that nobody may waive ever is.
func TestNothingIsDropped(t *testing.T) {
	asides := 0
	rapid.Check(t, func(t *rapid.T) {
		fs, ws := drawCase(t)
		out := Run(slices.Clone(fs), Waive(ws, plain()))
		left := map[string]finding.Finding{}
		for _, f := range out {
			if strings.HasPrefix(f.Rule, "waiver/") {
				continue
			}
			if f.Aside != nil {
				asides++
				if f.Rule != "a/graded" && f.Rule != "a/plain" {
					t.Fatalf("%+v is set aside", f)
				}
			}
			f.Aside = nil
			left[f.Message] = f
		}
		for _, f := range fs {
			if d := cmp.Diff(f, left[f.Message]); d != "" {
				t.Fatal(d)
			}
		}
		if len(left) != len(fs) {
			t.Fatalf("%d of %d", len(left), len(fs))
		}
	})
	if asides == 0 {
		t.Error("nothing was set aside in any case")
	}
}

// TestOrderOfWaivers makes no difference.
func TestOrderOfWaivers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		fs, ws := drawCase(t)
		for i := range ws {
			ws[i].Pointer = fmt.Sprintf("/waivers/%d", i)
		}
		want := Run(slices.Clone(fs), Waive(ws, plain()))
		seed := rapid.Uint64().Draw(t, "seed")
		rand.New(rand.NewPCG(seed, 1)).Shuffle(len(ws), func(i, j int) { ws[i], ws[j] = ws[j], ws[i] })
		got := Run(slices.Clone(fs), Waive(ws, plain()))
		flat := func(list []finding.Finding) []string {
			var out []string
			for _, f := range list {
				aside := ""
				if f.Aside != nil {
					aside = fmt.Sprint(*f.Aside)
				}
				f.Aside = nil
				out = append(out, fmt.Sprintf("%s %s %s %s %s %s", f.Rule, f.Key, f.Message, f.Place.Pointer, f.Severity, aside))
			}
			slices.Sort(out)
			return out
		}
		if d := cmp.Diff(flat(want), flat(got)); d != "" {
			t.Fatal(d)
		}
	})
}

// TestWorseIsNeverWaived: whatever was accepted, a figure that prints further
// beyond its limit, a stricter limit or a worse grade counts again.
func TestWorseIsNeverWaived(t *testing.T) {
	held := 0
	rapid.Check(t, func(t *rapid.T) {
		way := rapid.SampledFrom([]float64{1, -1}).Draw(t, "way")
		limit := rapid.Float64Range(30, 60).Draw(t, "limit")
		then, now := limit+way*rapid.Float64Range(0.5, 25).Draw(t, "then"), limit+way*rapid.Float64Range(0.5, 25).Draw(t, "now")
		limitNow := limit - way*rapid.SampledFrom([]float64{0, 0.5, -0.4}).Draw(t, "moved")
		grades := []string{"bad", "less"}
		w := plan.Waiver{Pointer: "/waivers/0", Rule: "a/graded", Subject: "k1", Until: lastDay("2027-01-01"),
			Grade: rapid.SampledFrom(grades).Draw(t, "grade then"), Measured: figure(then).Text, Limit: figure(limit).Text}
		f := finding.Finding{Rule: "a/graded", Key: "k1", Grade: rapid.SampledFrom(grades).Draw(t, "grade now"), Measured: figure(now), Limit: figure(limitNow)}
		out := Run([]finding.Finding{f}, Waive([]plan.Waiver{w}, plain()))
		waived := slices.ContainsFunc(out, func(f finding.Finding) bool { return f.Aside != nil })
		better := f.Grade == "less" && w.Grade == "bad"
		const digit = 0.11 // what the last digit printed leaves open, twice
		worse := f.Grade == "bad" && w.Grade == "less" || !better && (way*(now-then) > digit || way*(limit-limitNow) > digit)
		notWorse := better || f.Grade == w.Grade && way*(now-then) < -digit && way*(limit-limitNow) <= 0
		if waived && worse || !waived && notWorse {
			t.Fatalf("waived %v: %s %s against %s was accepted, and it is %s %s against %s", waived, w.Grade, w.Measured, w.Limit, f.Grade, f.Measured.Text, f.Limit.Text)
		}
		if waived {
			held++
		}
	})
	if held == 0 {
		t.Error("no waiver held in any case")
	}
}

// TestFigureWithoutLimit: where it can't be told which way is worse, any other
// figure lapses.
func TestFigureWithoutLimit(t *testing.T) {
	for now, want := range map[float64]bool{20: true, 20.01: true, 19: false, 21: false} {
		f := finding.Finding{Rule: "a/plain", Key: "k1", Measured: figure(now)}
		w := plan.Waiver{Rule: "a/plain", Subject: "k1", Measured: "20 deg", Until: lastDay("2027-01-01")}
		out := Run([]finding.Finding{f}, Waive([]plan.Waiver{w}, plain()))
		if got := out[0].Aside != nil || len(out) > 1 && out[1].Aside != nil; got != want {
			t.Errorf("%v: %v", now, out)
		}
	}
}

// TestFormerID: a waiver by an id that the rule had before holds, with a note.
func TestFormerID(t *testing.T) {
	f := finding.Finding{Rule: "a/graded", Grade: "less", Key: "k1", Severity: finding.Error}
	w := plan.Waiver{Rule: "a/once", Subject: "k1", Grade: "bad", Until: lastDay("2027-01-01")}
	out := Run([]finding.Finding{f}, Waive([]plan.Waiver{w}, plain()))
	if len(out) != 2 || out[0].Aside == nil || out[1].Rule != "waiver/former_id" || out[1].Severity != finding.Note {
		t.Errorf("%v", out)
	}
}

// TestForceWithItsMass: a figure is taken as the report prints it, the mass in
// parentheses included.
func TestForceWithItsMass(t *testing.T) {
	got, err := parse("tension_n", "58.8 kN (6 t)")
	if err != nil || got != 58800 {
		t.Errorf("%v, %v", got, err)
	}
	if _, err := parse("tension_n", "58.8 kN 6 t"); err == nil {
		t.Error("two values were read as one")
	}
}
