package lint

import (
	"slices"

	"liftlint/internal/finding"
	"liftlint/internal/triage"
)

// ToldOnce leaves what is found of a baseline as a whole to the first of the plans that
// it holds for: it is nothing of theirs.
func ToldOnce(results []*Result) {
	told := map[string]bool{}
	for _, r := range results {
		if r == nil {
			continue
		}
		r.Findings = slices.DeleteFunc(r.Findings, func(f finding.Finding) bool {
			again := f.Rule == triage.BaselineOtherStage && told[f.Place.File]
			told[f.Place.File] = told[f.Place.File] || f.Rule == triage.BaselineOtherStage
			return again
		})
	}
}
