package ruleexample_test

import (
	"context"
	"errors"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"liftlint/internal/lint"
	"liftlint/internal/ruleexample"
	"liftlint/policies"
)

// TestEveryRuleHasItsExamples: the one that breaks it is found by that rule,
// at those places, and by no other; the one that meets it is judged by the
// rule, and nothing is found in it.
func TestEveryRuleHasItsExamples(t *testing.T) {
	l, err := lint.New(lint.Options{Stage: "review"})
	if err != nil {
		t.Fatal(err)
	}
	rules, err := l.Rules("us")
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range rules {
		t.Run(r.ID, func(t *testing.T) {
			pair, err := ruleexample.Load(policies.Examples(), r.ID)
			if err != nil {
				t.Fatal(err)
			}
			breaks(t, judge(t, l, pair.Breaks), r.ID, pair.Breaks)
			meets(t, judge(t, l, pair.Meets), r.ID)
		})
	}
}

func judge(t *testing.T, l *lint.Linter, e ruleexample.Example) *lint.Result {
	t.Helper()
	if e.What == "" {
		t.Error("an example says nothing of itself")
	}
	r, err := l.Check(context.Background(), "example", []byte(e.Text))
	if err != nil {
		t.Fatal(err)
	}
	if r.State != lint.Judged {
		t.Fatalf("%s: the plan is %s: %v\n%s", e.What, r.State, r.Findings, e.Text)
	}
	return r
}

func breaks(t *testing.T, r *lint.Result, rule string, e ruleexample.Example) {
	t.Helper()
	var at []string
	for _, f := range r.Findings {
		if f.Rule != rule {
			t.Errorf("%s: found by %s too: %s", e.What, f.Rule, f.Message)
		}
		at = append(at, f.Place.Pointer)
	}
	if !slices.Equal(at, e.Finds) {
		t.Errorf("%s: found at %v, expected at %v", e.What, at, e.Finds)
	}
}

func meets(t *testing.T, r *lint.Result, rule string) {
	t.Helper()
	for _, f := range r.Findings {
		t.Errorf("what meets it is found by %s: %s", f.Rule, f.Message)
	}
	i := slices.IndexFunc(r.Checked, func(c lint.Checked) bool { return c.Rule == rule })
	if i < 0 || len(r.Checked[i].Met) == 0 {
		t.Error("what is to meet the rule is not judged by it")
	}
}

func TestLoadRefuses(t *testing.T) {
	base := &fstest.MapFile{Data: []byte("a: 1\n")}
	for name, c := range map[string]struct{ text, want string }{
		"unknown key":  {"base: b\nbraeks: {what: x}\n", "braeks"},
		"unknown base": {"base: c\nbreaks: {what: x}\nmeets: {what: y}\n", `base "c"`},
		"no place":     {"base: b\nbreaks: {what: x, set: [{at: /z, to: \"2\"}]}\nmeets: {what: y}\n", "/z"},
	} {
		files := fstest.MapFS{"t/r/examples.yaml": {Data: []byte(c.text)}, "bases/b.lift.yaml": base}
		if _, err := ruleexample.Load(files, "t/r"); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v", name, err)
		}
	}
	if _, err := ruleexample.Load(fstest.MapFS{}, "t/r"); !errors.Is(err, ruleexample.ErrNone) {
		t.Errorf("no file: %v", err)
	}
}

func TestSetTouchesNothingElse(t *testing.T) {
	files := fstest.MapFS{
		"t/r/examples.yaml": {Data: []byte("base: b\nbreaks: {what: x, set: [{at: /a/1/ü, to: \"27 mm\"}]}\nmeets: {what: y}\n")},
		"bases/b.lift.yaml": {Data: []byte("# ä\na:\n  - {x: 1}\n  - {é: 'ö', ü: 26 mm, z: 3} # end\n")},
	}
	p, err := ruleexample.Load(files, "t/r")
	if err != nil {
		t.Fatal(err)
	}
	if want := "# ä\na:\n  - {x: 1}\n  - {é: 'ö', ü: 27 mm, z: 3} # end\n"; p.Breaks.Text != want {
		t.Errorf("%q", p.Breaks.Text)
	}
	if p.Meets.Text != string(files["bases/b.lift.yaml"].Data) {
		t.Errorf("%q", p.Meets.Text)
	}
}
