package sarif

import (
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

// TestSuppressions: with one waiver every result of the run says whether it is set
// aside, and without any none does (3.27.23).
func TestSuppressions(t *testing.T) {
	x := *reporttest.HandMade(t)
	x.Findings = finding.Counting(x.Findings)
	other := x
	other.File, other.Findings = "plans/other.lift.yaml", finding.Counting(x.Findings)
	r := report.Run{Results: []*lint.Result{&x, &other}}
	_, got := written(t, r, Options{})
	for _, res := range got.Results {
		if res.Suppressions != nil {
			t.Errorf("%+v", res)
		}
	}
	aside := finding.Aside{Means: finding.ByWaiver, Reason: "tried with a model", By: "planner", ApprovedBy: "engineer", Until: "2026-12-31", Place: reporttest.At(x.File, 9, 3, 8)}
	known := finding.Aside{Means: finding.ByBaseline, Place: reporttest.At("known.json", 4, 3, 8)}
	x.Findings[1].Aside, x.Findings[2].Aside = &aside, &known
	_, got = written(t, r, Options{Evidence: true})
	for i, res := range got.Results {
		want := map[int]suppression{
			1: {Kind: "inSource", Status: "accepted", Justification: "by planner, approved by engineer, until 2026-12-31: tried with a model"},
			2: {Kind: "external", Status: "accepted", Justification: "from known.json"},
		}[i]
		switch {
		case res.Suppressions == nil:
			t.Errorf("%d does not say whether it is set aside", i)
		case want.Kind == "":
			if len(res.Suppressions) != 0 {
				t.Errorf("%d: %+v", i, res.Suppressions)
			}
		default:
			s := res.Suppressions[0]
			if s.Location == nil || s.Location.PhysicalLocation.Region == nil {
				t.Fatalf("%d: %+v has no place", i, s)
			}
			if s.Location = nil; s != want {
				t.Errorf("%d: %+v", i, s)
			}
		}
	}
}
