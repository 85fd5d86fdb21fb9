package plangen_test

import (
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/plangen"
)

// TestArrangedFaultsAreFound: each mistake is reported by what should report it, as
// bad as it is, with its line first; and nothing else is as bad.
func TestArrangedFaultsAreFound(t *testing.T) {
	t.Parallel()
	l := linter(t)
	for seed := range uint64(2 * plangen.ArrangedMistakes()) {
		f := plangen.ArrangedFault(seed)
		if f != plangen.ArrangedFault(seed) {
			t.Fatalf("seed %d gives two plans", seed)
		}
		r := check(t, l, f.Text)
		if !found(r, f) {
			t.Errorf("seed %d: %s is not reported as %s of %s at line %d:\n%s\n%s", seed, f.What, f.Severity, f.Rule, f.Line, told(r), f.Text)
		}
		for _, x := range r.Findings {
			if x.Rule != f.Rule && x.Rule != brings(f.Rule) && x.Severity.AtLeast(finding.Severity(f.Severity)) && !left(f.Text, x) {
				t.Errorf("seed %d: %s also gives\n%s", seed, f.What, told(r))
				break
			}
		}
	}
}

// brings is what a finding can't come without: a sling that does not go round is
// hardly one, and the hook is not plumb over a spreader on unlike legs.
func brings(rule string) string {
	return map[string]string{"mechanics/no_balance": "sling/body_too_short", "beam/tilts": "load/hook_not_plumb"}[rule]
}
