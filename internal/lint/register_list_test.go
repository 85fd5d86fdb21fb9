package lint_test

import (
	"strings"
	"testing"

	"liftlint/internal/lint"
)

// TestMalformedListsBesideARegister: what a plan says in a list beside an item on
// file is never passed over. Where it is malformed the plan is not valid, and one
// finding says so at its place in the plan, whether the register has such a list
// or not.
func TestMalformedListsBesideARegister(t *testing.T) {
	plan, register := onFile(t)
	lists := changed(t, register, "    length: 2.5 m\n", "    length: 2.5 m\n    faults_seen: []\n    labels: [{label: color, value: red}]\n")
	for _, c := range []struct{ says, rule, message, at string }{
		{"faults_seen: cut", "plan/wrong_type", "`cut` is text; a list", "cut"},
		{"faults_seen: {kink: true}", "plan/wrong_type", "a mapping stands here; a list", "{kink"},
		{"faults_seen: null", "plan/wrong_type", "`null` stands for nothing; a list", "null"},
		{"faults_seen: true", "plan/wrong_type", "`true` is a truth value; a list", "true"},
		{"faults_seen: [1]", "plan/wrong_type", "entry 1 of `faults_seen` of gear S1: `1` is a number", "1]"},
		{"faults_seen: [kink, knik]", "plan/not_allowed", "entry 2 of `faults_seen` of gear S1: `knik` is none of the values here: did you mean `kink`?", "knik"},
		{"faults_seen: [[kink]]", "plan/wrong_type", "entry 1 of `faults_seen` of gear S1: a list stands here", "[kink]"},
		{"labels: red", "plan/wrong_type", "`red` is text; a list", "red"},
		{"labels: {color: red}", "plan/wrong_type", "a mapping stands here; a list", "{color"},
		{"labels: null", "plan/wrong_type", "`null` stands for nothing; a list", "null"},
		{"labels: []", "plan/list_length", "the list is empty", "labels"},
		{"labels: [red]", "plan/wrong_type", "entry 1 of `labels` of gear S1: `red` is text; a mapping", "red"},
		{"labels: [{label: owner, value: x}, {label: color}]", "plan/missing_key", "entry 2 of `labels` of gear S1 lacks `value`", "{label: color"},
		{"labels: [{label: color, value: 7}]", "plan/wrong_type", "`value` of entry 1 of `labels` of gear S1: `7` is a number", "7}"},
		{"labels: [{label: color, value: red, other: x}]", "plan/unknown_key", "`other` is no key of entry 1 of `labels`", "other"},
	} {
		text := changed(t, plan, "item: WR-11", "item: WR-11, "+c.says)
		for name, register := range map[string]string{"no lists in the register": register, "lists in the register": lists} {
			t.Run(name+"/"+c.says, func(t *testing.T) {
				r := checkOnFile(t, text, register)
				if r.State != lint.NotValid || len(r.Findings) != 1 {
					t.Fatalf("%s: %+v", r.State, r.Findings)
				}
				f := r.Findings[0]
				from := f.Place.Range.From
				line := strings.Split(text, "\n")[from.Line-1]
				if f.Rule != c.rule || !strings.Contains(f.Message, c.message) || f.Place.File != "plan.lift.yaml" || !strings.HasPrefix(line[from.Column-1:], c.at) {
					t.Errorf("%s: %s at %s", f.Rule, f.Message, line[from.Column-1:])
				}
			})
		}
	}
}
