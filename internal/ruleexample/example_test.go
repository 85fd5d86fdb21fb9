package ruleexample_test

import (
	"context"
	"errors"
	"strings"
	"testing"
	"testing/fstest"

	"liftlint/internal/datafile"
	"liftlint/internal/lint"
	"liftlint/internal/ruleexample"
	"liftlint/internal/rulekit"
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
			trials, err := rulekit.Examples(context.Background(), l, r.ID)
			if err != nil {
				t.Fatal(err)
			}
			for _, x := range trials {
				for _, fault := range x.Faults {
					t.Errorf("%s (%s): %s", x.Kind, x.What, fault)
				}
			}
		})
	}
}

func TestLoadRefuses(t *testing.T) {
	base := &fstest.MapFile{Data: []byte("a: 1\n")}
	const meets = "\nmeets: {what: met}\n"
	for name, c := range map[string]struct{ text, want string }{
		"unknown key":  {"base: b\nbraeks: {what: x}" + meets, `t/r/examples.yaml:2:1: "braeks" is no key here: did you mean "breaks"?`},
		"unknown base": {"base: c\nbreaks: {what: x}" + meets, `t/r/examples.yaml:1:1: there is no base "c": two_legs, `},
		"no place":     {"base: b\nbreaks:\n  set:\n    - {at: /z, to: \"2\"}" + meets, "t/r/examples.yaml:4:8: the base has nothing at /z"},
		"number":       {"base: b\nbreaks: {what: x, set: [{at: /a, to: 2}]}" + meets, "t/r/examples.yaml:2:34: to: want text, found a number"},
		"not a list":   {"base: b\nbreaks: {what: x, finds: /a}" + meets, "t/r/examples.yaml:2:19: finds: want a list, found text"},
		"broken plan":  {"base: b\nbreaks:\n  set:\n    - {at: /a, to: \"[\"}\n    - {at: /a, to: \"2\"}" + meets, "t/r/examples.yaml:5:8: before /a is set: "},
		"yaml":         {"base: [b", "t/r/examples.yaml:1:"},
		"empty":        {"", "t/r/examples.yaml:1:1: this file is empty"},
	} {
		files := fstest.MapFS{"t/r/examples.yaml": {Data: []byte(c.text)}, "bases/b.lift.yaml": base}
		_, err := ruleexample.Load(files, "t/r")
		var ps datafile.Problems
		if !errors.As(err, &ps) || !strings.HasPrefix(err.Error(), c.want) {
			t.Errorf("%s:\ngot  %v\nwant %s", name, err, c.want)
		}
	}
	if _, err := ruleexample.Load(fstest.MapFS{}, "t/r"); !errors.Is(err, ruleexample.ErrNone) {
		t.Errorf("no file: %v", err)
	}
}

func TestSetTouchesNothingElse(t *testing.T) {
	files := fstest.MapFS{
		"t/r/examples.yaml": {Data: []byte("base: b\nbreaks: {what: x, set: [{at: /a/1/ü, to: \"27 mm\"}]}\nmeets: {what: met}\n")},
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
