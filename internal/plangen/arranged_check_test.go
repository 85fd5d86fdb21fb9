package plangen_test

import (
	"strings"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/plangen"
)

// TestArrangedPlansBreakNoRule: each is judged, and nothing worse than a note is
// found.
func TestArrangedPlansBreakNoRule(t *testing.T) {
	t.Parallel()
	l := linter(t)
	for seed := range arrangedSeeds() / 2 {
		text := plangen.Arranged(seed)
		r := check(t, l, text)
		if r.State != lint.Judged {
			t.Fatalf("seed %d is %s:\n%s\n%s", seed, r.State, told(r), text)
		}
		accounted(t, seed, r)
		for _, f := range r.Findings {
			if f.Severity != finding.Note && !left(text, f) {
				t.Errorf("seed %d, %s: line %d: %s %s: %s", seed, plangen.ArrangementOf(seed), f.Place.Range.From.Line, f.Severity, f.Rule, f.Message)
			}
		}
	}
}

// left tells of findings that a sound plan may have: lengths that are left open are
// told and missed, how the parts of a doubled sling share is warned of, and a plan
// says nothing of the ends of load cells, turnbuckles and blocks.
func left(text string, f finding.Finding) bool {
	switch f.Rule {
	case "route/length_open":
		return strings.Contains(text, "height_above_datum")
	case "hitch/doubled_parts_equal":
		return strings.Contains(text, "doubled")
	case "input/missing":
		return strings.Contains(text, "height_above_datum") && strings.Contains(f.Message, "`length`")
	case "input/not_judged":
		return strings.Contains(f.Message, "how thick and wide the ends of")
	}
	return false
}
