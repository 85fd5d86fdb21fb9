package sarif

import (
	"slices"
	"testing"

	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

// TestSuppressions: with one waiver every result says whether it is waived, and
// without any none does (3.27.23).
func TestSuppressions(t *testing.T) {
	x := reporttest.HandMade(t)
	r := report.Run{Results: []*lint.Result{x}}
	_, got := written(t, r, Options{})
	for _, res := range got.Results {
		if res.Suppressions != nil {
			t.Errorf("%+v", res)
		}
	}
	waiver := Suppression{Kind: "inSource", Status: "accepted", Justification: "tried with a model"}
	_, got = written(t, r, Options{Suppressions: map[string][]Suppression{report.Fingerprints(x)[1]: {waiver}}})
	for i, res := range got.Results {
		if res.Suppressions == nil || (i == 1) != slices.Contains(res.Suppressions, waiver) {
			t.Errorf("%d: %+v", i, res.Suppressions)
		}
	}
}
