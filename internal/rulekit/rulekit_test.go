package rulekit_test

import (
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/rulekit"
)

const id = "angle/steep_for_us"

// begun is a folder with a rule just begun, and a linter that has it.
func begun(t *testing.T) (string, *lint.Linter) {
	t.Helper()
	folder := t.TempDir()
	files, err := rulekit.New(folder, id)
	if err != nil || len(files) != 3 {
		t.Fatalf("%v, %v", files, err)
	}
	return folder, linter(t, folder)
}

func linter(t *testing.T, folder string) *lint.Linter {
	t.Helper()
	l, err := lint.New(lint.Options{Stage: "review", Rules: []policy.Source{{Root: folder, Files: os.DirFS(folder)}}})
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func alone(t *testing.T, l *lint.Linter) policy.Options {
	t.Helper()
	o, err := l.RuleOptions(l.Profile())
	if err != nil {
		t.Fatal(err)
	}
	o.Only = []string{id}
	return o
}

// TestNewRulePassesAtOnce: its tests, its examples, and no change of it goes
// unnoticed.
func TestNewRulePassesAtOnce(t *testing.T) {
	_, l := begun(t)
	results, err := policy.Test(t.Context(), alone(t, l))
	if err != nil || len(results) < 2 {
		t.Fatalf("%v, %v", results, err)
	}
	for _, r := range results {
		if !r.Passed {
			t.Errorf("%s: %s", r.Name, r.Reason)
		}
	}
	trials, err := rulekit.Examples(t.Context(), l, id)
	if err != nil || len(trials) != 2 {
		t.Fatalf("%v, %v", trials, err)
	}
	for _, x := range trials {
		if !x.Passed() || x.What == "" {
			t.Errorf("%+v", x)
		}
	}
	list, err := policy.Mutate(t.Context(), alone(t, l), nil)
	if err != nil || len(list) != 1 || len(list[0].Survivors) > 0 || list[0].Killed < 4 {
		t.Errorf("%+v, %v", list, err)
	}
}

func TestNewRefuses(t *testing.T) {
	folder, _ := begun(t)
	if _, err := rulekit.New(folder, id); err == nil || !strings.Contains(err.Error(), "is there already") {
		t.Errorf("written over: %v", err)
	}
	for _, bad := range []string{"steep", "Angle/steep", "../a/b", "a/b/c", "a/", "a/-b"} {
		if _, err := rulekit.New(folder, bad); err == nil || !strings.Contains(err.Error(), "TOPIC/NAME") {
			t.Errorf("%q: %v", bad, err)
		}
	}
}

// TestExamplesThatDoNotDoWhatTheySay: each way is a fault of its own.
func TestExamplesThatDoNotDoWhatTheySay(t *testing.T) {
	const meets = "meets: {what: as it stands}\n"
	for _, c := range []struct{ text, want string }{
		{"base: two_legs\nbreaks: {what: nothing}\n" + meets, ""}, // no places expected, none found
		{"base: two_legs\nbreaks: {what: nothing, finds: [/load]}\n" + meets, "found at [], expected at [/load]"},
		{"base: two_legs\nbreaks: {what: unsaid, also: [load/tilt]}\n" + meets, "load/tilt finds nothing in it, though it is named under also"},
		{"base: two_legs\nbreaks: {what: overloaded, set: [{at: /load/mass, to: 9 t}]}\n" + meets, "load/over_rated_load finds something in it too"},
		{"base: two_legs\nbreaks: {what: no plan, set: [{at: /load/mass, to: heavy}]}\n" + meets, "the plan is not valid"},
		{"base: two_legs\nbreaks: {}\n" + meets, "it says nothing of itself"},
		{"base: two_legs\nbreaks: {what: nothing}\nmeets: {what: short, set: [{at: /gear/0/length, to: 2.2 m}, {at: /gear/1/length, to: 2.2 m}]}\n", "angle/steep_for_us finds something in it"},
		{"base: none\nbreaks: {what: x}\n" + meets, "base \"none\""},
	} {
		folder, _ := begun(t)
		if err := os.WriteFile(filepath.Join(folder, id, "examples.yaml"), []byte(c.text), 0o644); err != nil {
			t.Fatal(err)
		}
		l := linter(t, folder)
		trials, err := rulekit.Examples(context.Background(), l, id)
		if err != nil {
			if c.want == "" || !strings.Contains(err.Error(), c.want) {
				t.Errorf("%s: %v", c.text, err)
			}
			continue
		}
		var faults []string
		for _, x := range trials {
			faults = append(faults, x.Faults...)
		}
		if got := strings.Join(faults, "\n"); !strings.Contains(got, c.want) || c.want == "" && got != "" {
			t.Errorf("%s:\ngot  %s\nwant %s", c.text, got, c.want)
		}
	}
}

// TestUnnoticed: what the tests let through is told by the examples, where they
// show it.
func TestUnnoticed(t *testing.T) {
	folder, _ := begun(t)
	weak := "package liftlint.rules.angle.steep_for_us_test\n\nimport data.liftlint.rules.angle.steep_for_us.finding\n\n" +
		"legs(angle) := {\"legs\": [{\"key\": \"leg/hook/1\", \"angle_from_horizontal_deg\": angle}]}\n\n" +
		"test_breaks if finding == {\"leg/hook/1\"} with input as legs(20)\n\ntest_meets if finding == set() with input as legs(90)\n"
	if err := os.WriteFile(filepath.Join(folder, id, "rule_test.rego"), []byte(weak), 0o644); err != nil {
		t.Fatal(err)
	}
	l := linter(t, folder)
	by := func(alive policy.Alive) string {
		list, err := policy.Mutate(t.Context(), alone(t, l), alive)
		if err != nil {
			t.Fatal(err)
		}
		var words []string
		for _, m := range list[0].Survivors {
			words = append(words, m.What)
		}
		return strings.Join(words, "; ")
	}
	tests, both := by(nil), by(rulekit.Unnoticed(l, l.Profile()))
	if !strings.Contains(tests, "least_deg") || !strings.Contains(tests, "< became <=") {
		t.Errorf("the tests alone let through: %s", tests)
	}
	if strings.Contains(both, "least_deg") || !strings.Contains(both, "< became <=") {
		t.Errorf("tests and examples let through: %s", both)
	}
}
