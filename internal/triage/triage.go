// Package triage goes over the findings of a plan in small steps: it sets aside
// what is waived in the plan or known from a baseline, and puts all in order. It
// never takes a finding away, and what liftlint finds about the file or the check
// itself is kept apart from it.
package triage

import (
	"liftlint/internal/builtin"
	"liftlint/internal/finding"
)

// Step goes over the findings of rules. It may mark them and add findings of
// built-in checks; it returns all that it was given.
type Step func([]finding.Finding) []finding.Finding

// Run puts the findings through the steps and in reading order. Findings of
// built-in checks, those that a step adds among them, pass through none.
func Run(fs []finding.Finding, steps ...Step) []finding.Finding {
	apart, open := split(fs)
	for _, step := range steps {
		more, left := split(step(open))
		apart, open = append(apart, more...), left
	}
	return finding.Sort(append(open, apart...))
}

// split parts findings of built-in checks from those of rules.
func split(fs []finding.Finding) (own, rules []finding.Finding) {
	for _, f := range fs {
		if _, ok := builtin.Lookup(f.Rule); ok {
			own = append(own, f)
		} else {
			rules = append(rules, f)
		}
	}
	return own, rules
}
