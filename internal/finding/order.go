package finding

import (
	"cmp"
	"slices"
)

// Sort puts findings in reading order (file, place, worst first, rule,
// subject) and drops exact repeats.
func Sort(fs []Finding) []Finding {
	slices.SortStableFunc(fs, compare)
	return slices.CompactFunc(fs, func(a, b Finding) bool {
		return compare(a, b) == 0
	})
}

func compare(a, b Finding) int {
	return cmp.Or(
		cmp.Compare(a.Place.File, b.Place.File),
		cmp.Compare(a.Place.Range.From.Line, b.Place.Range.From.Line),
		cmp.Compare(a.Place.Range.From.Column, b.Place.Range.From.Column),
		cmp.Compare(b.Severity.Rank(), a.Severity.Rank()),
		cmp.Compare(a.Rule, b.Rule),
		cmp.Compare(a.Key, b.Key),
		cmp.Compare(a.Message, b.Message),
	)
}

// Worst returns the worst severity among the findings, empty when there are none.
func Worst(fs []Finding) Severity {
	worst := Severity("")
	for _, f := range fs {
		if worst == "" || f.Severity.AtLeast(worst) {
			worst = f.Severity
		}
	}
	return worst
}
