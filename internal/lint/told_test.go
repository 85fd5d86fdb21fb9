package lint_test

import (
	"os"
	"slices"
	"strings"
	"testing"

	"liftlint/internal/config"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
)

// TestReasonThatNothingTellsIsFound: that slings are hotter than anything rates them
// (204 C: 29 CFR 1926.251(c)) is found by a rule. Where a company takes that out,
// nothing tells that no rated load is known for them; the plan does not pass.
func TestReasonThatNothingTellsIsFound(t *testing.T) {
	hot := changed(t, example(t, "pump-skid"), "  units: metric\n", "  units: metric\n  temperature: {lowest: 10 C, highest: 230 C}\n")
	r := check(t, linter(t, lint.Options{}), hot)
	if len(of(r, "sling/temperature")) == 0 || len(of(r, "input/not_judged")) != 0 {
		t.Fatalf("%s", rules(r))
	}
	off := config.Config{Files: []string{"x"}, Layers: []policy.Layer{{Name: "company/liftlint.yaml", Rules: map[string]policy.Setting{
		"sling/temperature": {Off: "our furnaces have rules of their own"}, "hardware/temperature": {Off: "so they have for these"},
	}}}}
	r = check(t, linter(t, lint.Options{Config: off}), hot)
	told := of(r, "input/not_judged")
	if len(told) != 9 {
		t.Fatalf("%s", rules(r))
	}
	for _, f := range told {
		if f.Severity != finding.Error || f.Aside != nil || !strings.Contains(f.Message, "is not rated at its temperature") {
			t.Errorf("%s: %s", f.Severity, f.Message)
		}
		id, _, _ := strings.Cut(f.Message, " ")
		if line := r.Line(f.Place.Range.From.Line); !strings.Contains(line, "id: "+id) {
			t.Errorf("%s stands at %q", f.Message, line)
		}
	}
}

// TestFindingsOfWaiversTellNothing: that a waiver for a sling has run out says nothing
// of why no rated load is known for it.
func TestFindingsOfWaiversTellNothing(t *testing.T) {
	hot := changed(t, example(t, "pump-skid"), "  units: metric\n", "  units: metric\n  temperature: {lowest: 10 C, highest: 230 C}\n")
	const ofS1 = "serial: \"0231\", diameter: 22 mm, rated_load: 5.65 t, hitch: vertical, angle_from_horizontal: 90 deg, legs: 1, design_factor: 5}\n    inspection: {date: "
	hot = changed(t, hot, ofS1+"2026-06-11", ofS1+"2025-12-10") // due within the month
	hot += "waivers:\n  - {rule: inspection/due_soon, subject: gear/S1, " + people + ", until: 2026-01-01}\n"
	off := config.Config{Files: []string{"x"}, Layers: []policy.Layer{{Name: "company/liftlint.yaml", Rules: map[string]policy.Setting{
		"sling/temperature": {Off: "our furnaces have rules of their own"},
	}}}}
	r := check(t, linter(t, lint.Options{Config: off}), hot)
	if len(of(r, "waiver/expired")) != 1 {
		t.Fatalf("%s", rules(r))
	}
	if !slices.ContainsFunc(of(r, "input/not_judged"), func(f finding.Finding) bool {
		return strings.HasPrefix(f.Message, "S1 is not rated at its temperature")
	}) {
		t.Errorf("%s", rules(r))
	}
}

// TestReasonIsSetAsideWithWhatTellsIt: who accepts a bend for which nothing is rated
// sees what can't be judged for it, among what is accepted.
func TestReasonIsSetAsideWithWhatTellsIt(t *testing.T) {
	base, err := os.ReadFile("../../policies/bases/pipe.lift.yaml")
	if err != nil {
		t.Fatal(err)
	}
	thin := changed(t, string(base), "diameter: 610 mm", "diameter: 12 mm")
	l := linter(t, lint.Options{})
	if r := check(t, l, thin); len(of(r, "bend/sling_round_thin_body")) != 2 || len(of(r, "input/not_judged")) != 0 {
		t.Fatalf("%s", rules(r))
	}
	r := check(t, l, thin+"waivers:\n  - {rule: bend/sling_round_thin_body, subject: hitch/hook to pipe by S1, grade: rope, "+people+", until: 2026-12-31}\n")
	if got := asideOf(r, "input/not_judged"); !slices.Equal(got, []string{"S1 in its basket is bent round 0.86 of its rope's diameter, for which nothing is rated"}) {
		t.Errorf("%s: %v", rules(r), got)
	}
	if n := len(of(r, "input/not_judged")); n != 1 {
		t.Errorf("%d reasons; the bend of the other sling is still found", n)
	}
}
