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
	o := policy.Options{Sources: sources(), Profile: profile(t, "us")}
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
		"rules: {angle/leg_too_flat: {params: {error_deg: 45, warning_deg: 50}}, tension/leg_slack: {severity: warning}, route/gear_unused: {off: kits travel whole}}",
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
	slack, _ := p.Rule("tension/leg_slack")
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
		"route/gear_unused | off | outer.yaml | on | off: kits travel whole",
		"tension/leg_slack | severity | outer.yaml | error | warning",
	}
	if diff := cmp.Diff(want, list); diff != "" {
		t.Error(diff)
	}
}

// TestLocks: nothing below weakens a locked rule; raising it stays free, and so
// does saying the same again.
func TestLocks(t *testing.T) {
	const outer = "rules: {angle/leg_too_flat: {params: {error_deg: 45}}}\nlocked: [angle/leg_too_flat, tension/leg_slack]"
	for _, c := range []struct{ inner, want string }{
		{"rules: {angle/leg_too_flat: {params: {error_deg: 30}}}", "inner.yaml:1:39: rule angle/leg_too_flat is locked by outer.yaml: nothing below may weaken it"},
		{"rules: {angle/leg_too_flat: {grades: {too_flat: warning}}}", "inner.yaml:1:39: rule angle/leg_too_flat is locked by outer.yaml: nothing below may weaken it"},
		{"rules: {tension/leg_slack: {off: never mind}}", "inner.yaml:1:29: rule tension/leg_slack is locked by outer.yaml: nothing below may weaken it"},
		{"rules: {tension/leg_slack: {severity: note}}", "inner.yaml:1:29: rule tension/leg_slack is locked by outer.yaml: nothing below may weaken it"},
		{"rules: {angle/leg_too_flat: {params: {error_deg: 45}, grades: {flat: error}}}", ""},
		{"rules: {tension/leg_slack: {severity: error}}", ""},
		{"locked: [angle/leg_to_flat]", `inner.yaml:1:10: there is no rule "angle/leg_to_flat" to lock: did you mean "angle/leg_too_flat"?`},
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
