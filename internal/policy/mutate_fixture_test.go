package policy_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"liftlint/internal/policy"
)

// trial is a rule over gear for mutants to be made of.
func trial(name, params, body string) string {
	if params != "" {
		params = "#   params:\n#     " + strings.ReplaceAll(params, "\n", "\n#     ") + "\n"
	}
	return `# METADATA
# title: t
# description: A rule for this test.
# custom:
#   severity: error
#   over: gear
` + params + `#   message: "{id}"
#   cite: [{document: company handbook, basis: company}]
package liftlint.rules.own.` + name + `

import data.params.own.` + name + ` as p

finding contains item.key if {
	some item in input.gear
	` + strings.ReplaceAll(body, "\n", "\n\t") + `
}
`
}

// trialTests are tests of one record each: "breaks" or "meets" and its fields.
func trialTests(name string, tests []string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "package liftlint.rules.own.%s_test\n\nimport data.liftlint.rules.own.%[1]s.finding\n\n", name)
	b.WriteString("found(x) := got if got := count(finding) with input as {\"gear\": [x]}\n\n")
	b.WriteString("# Each rule has to have a test of either name.\ntest_meets if true\n\n")
	for i, test := range tests {
		kind, record, _ := strings.Cut(test, " ")
		want := map[string]int{"breaks": 1, "meets": 0}[kind]
		fmt.Fprintf(&b, "test_%s_%d if found({\"key\": \"gear/S1\", %s}) == %d\n\n", kind, i, record, want)
	}
	return b.String()
}

// blind are tests that pass whatever the rule says.
func blind(name string) string {
	return "package liftlint.rules.own." + name + "_test\n\ntest_breaks if true\n\ntest_meets if true\n"
}

func own(rule, tests string) policy.Options {
	return policy.Options{Sources: folder(map[string]string{"own/try/rule.rego": rule, "own/try/rule_test.rego": tests})}
}

func mutate(t testing.TB, o policy.Options, alive policy.Alive) []policy.RuleMutants {
	t.Helper()
	list, err := policy.Mutate(context.Background(), o, alive)
	if err != nil {
		t.Fatal(err)
	}
	return list
}

// whats lists what was changed in the survivors.
func whats(m policy.RuleMutants) []string {
	out := []string{}
	for _, s := range m.Survivors {
		out = append(out, s.What)
	}
	return out
}
