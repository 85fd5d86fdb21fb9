package policy_test

import (
	"context"
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/datafile"
	"liftlint/internal/finding"
	"liftlint/internal/policy"
)

// layered loads the built-in rules under layers written as YAML, the outermost
// first.
func layered(t *testing.T, texts ...string) (*policy.Pack, error) {
	t.Helper()
	o := policy.Options{Sources: sources(), Profile: profile(t, "us"), BuiltIn: []string{"input/missing"}}
	for i, text := range texts {
		name := []string{"outer.yaml", "inner.yaml"}[i]
		tree, ps := datafile.Read(datafile.Text{File: name, Text: text, Line: 1})
		if len(ps) > 0 {
			t.Fatal(ps)
		}
		var l policy.Layer
		if err := datafile.Convert(tree.Root, &l); err != nil {
			t.Fatal(err)
		}
		l.Name, l.Tree = name, tree
		o.Layers = append(o.Layers, l)
	}
	return policy.Load(context.Background(), o)
}

// TestLayers: a later layer goes before an earlier one, and each value knows
// where it comes from.
func TestLayers(t *testing.T) {
	p, err := layered(t,
		"rules: {angle/leg_too_flat: {params: {error_deg: 45, warning_deg: 50}}, route/attachment_unused: {severity: warning}, route/gear_unused: {off: kits travel whole}}",
		"rules: {angle/leg_too_flat: {params: {error_deg: 40}, grades: {below_usual: warning}}}")
	if err != nil {
		t.Fatal(err)
	}
	flat, _ := p.Rule("angle/leg_too_flat")
	from := map[string]string{}
	for _, x := range flat.Params {
		from[x.Name] = policy.Words(x.Value) + " " + x.From
	}
	if diff := cmp.Diff(map[string]string{"error_deg": "40 inner.yaml", "warning_deg": "50 outer.yaml", "note_deg": "60 "}, from); diff != "" {
		t.Error(diff)
	}
	slack, _ := p.Rule("route/attachment_unused")
	if slack.Severity != policy.Always(finding.Warning) {
		t.Errorf("%v", slack.Severity)
	}
	unused, _ := p.Rule("route/gear_unused")
	if unused.Off != "kits travel whole" || unused.OffBy != "outer.yaml" {
		t.Errorf("%q by %q", unused.Off, unused.OffBy)
	}
	var list []string
	for _, o := range p.Overrides() {
		list = append(list, strings.Join([]string{o.Rule, o.What, o.From, o.Was, o.Is}, " | "))
	}
	want := []string{
		"angle/leg_too_flat | error_deg | outer.yaml | 30 | 45",
		"angle/leg_too_flat | warning_deg | outer.yaml | 45 | 50",
		"angle/leg_too_flat | error_deg | inner.yaml | 45 | 40",
		"angle/leg_too_flat | below_usual | inner.yaml | note | warning",
		"route/attachment_unused | severity | outer.yaml | error | warning",
		"route/gear_unused | off | outer.yaml | on | kits travel whole",
	}
	if diff := cmp.Diff(want, list); diff != "" {
		t.Error(diff)
	}
}

// TestLocks: nothing below weakens a locked rule; raising it stays free, and so
// does saying the same again.
func TestLocks(t *testing.T) {
	const outer = "rules: {angle/leg_too_flat: {params: {error_deg: 45}}, route/gear_unused: {off: kits}}\nlocked: [angle/leg_too_flat, route/attachment_unused]"
	for _, c := range []struct{ inner, want string }{
		{"rules: {angle/leg_too_flat: {params: {error_deg: 30}}}", "inner.yaml:1:39: rule angle/leg_too_flat is locked by outer.yaml: its parameters stay as they are there"},
		{"rules: {angle/leg_too_flat: {params: {error_deg: 50}}}", "inner.yaml:1:39: rule angle/leg_too_flat is locked by outer.yaml: its parameters stay as they are there"},
		{"rules: {angle/leg_too_flat: {grades: {too_flat: warning}}}", "inner.yaml:1:39: rule angle/leg_too_flat is locked by outer.yaml: nothing below may weaken it"},
		{"rules: {route/attachment_unused: {off: never mind}}", "inner.yaml:1:35: rule route/attachment_unused is locked by outer.yaml: nothing below may weaken it"},
		{"rules: {route/attachment_unused: {severity: note}}", "inner.yaml:1:35: rule route/attachment_unused is locked by outer.yaml: nothing below may weaken it"},
		{"rules: {angle/leg_too_flat: {params: {error_deg: 45}, grades: {flat: error}}}", ""},
		{"rules: {route/attachment_unused: {severity: error}}", ""},
		{"locked: [input/missing]", "inner.yaml:1:10: input/missing is a check that is built in: it can't be locked"},
		{"rules: {route/gear_unused: {severity: error}}", "inner.yaml:1:29: rule route/gear_unused is switched off by outer.yaml, so that setting its severity would change nothing"},
		{"rules: {route/gear_unused: {off: for another reason}}", ""},
		{"locked: [angle/leg_to_flat]", `inner.yaml:1:10: there is no rule "angle/leg_to_flat": did you mean "angle/leg_too_flat"?`},
	} {
		_, err := layered(t, outer, c.inner)
		switch {
		case c.want == "" && err != nil:
			t.Errorf("%s: %v", c.inner, err)
		case c.want != "" && (err == nil || err.Error() != c.want):
			t.Errorf("%s:\ngot  %v\nwant %s", c.inner, err, c.want)
		}
	}
}

// TestLayersThatAreWrong: each mistake is named at its place in its file.
func TestLayersThatAreWrong(t *testing.T) {
	for text, want := range map[string]string{
		"rules: {load/turns_over: {off: never}}":                                                        "outer.yaml:1:27: rule load/turns_over can't be switched off",
		"rules: {load/tilt: {params: {error_deg: 60}}}":                                                 "outer.yaml:1:30: parameter error_deg of load/tilt: the value 60 is over 45, the most it can be",
		"rules: {angle/leg_to_flat: {off: x}}":                                                          `outer.yaml:1:9: there is no rule "angle/leg_to_flat": did you mean "angle/leg_too_flat"?`,
		"rules: {no/such_thing_at_all: {off: x}}":                                                       `outer.yaml:1:9: there is no rule "no/such_thing_at_all": liftlint rules lists them`,
		"rules: {input/missing: {severity: note}}":                                                      "outer.yaml:1:9: input/missing is a check that is built in: it can't be set",
		"rules: {angle/leg_too_flat: {grades: {flat: error, too_flat: warning}}}":                       `outer.yaml:1:39: grades of angle/leg_too_flat stand worst first, and with this "flat" is more severe than "too_flat" at stage draft: set both`,
		"rules: {load/tilt: {params: {eror_deg: 3}}}":                                                   `outer.yaml:1:30: rule load/tilt has no parameter "eror_deg": did you mean "error_deg"?`,
		"rules: {load/turns_over: {grades: {overturns: {draft: note, review: error, prelift: error}}}}": "outer.yaml:1:36: rule load/turns_over can't be lowered",
	} {
		_, err := layered(t, text)
		var ps policy.Problems
		if !errors.As(err, &ps) || err.Error() != want {
			t.Errorf("%s:\ngot  %v\nwant %s", text, err, want)
		}
	}
}
