package builtin

import (
	"slices"
	"testing"

	"liftlint/internal/compute"
	"liftlint/internal/finding"
	"liftlint/internal/plan"
	"liftlint/internal/yamldoc"
)

func TestCatalogIsComplete(t *testing.T) {
	checks, err := All()
	if err != nil {
		t.Fatal(err)
	}
	seen := map[string]bool{}
	for _, c := range checks {
		if seen[c.ID] {
			t.Errorf("%s stands twice in the catalog", c.ID)
		}
		seen[c.ID] = true
		if c.Title == "" || c.Description == "" || !slices.Contains(finding.Severities(), c.Severity) {
			t.Errorf("%s lacks a title, a description or a severity", c.ID)
		}
	}
	for _, id := range slices.Concat(yamldoc.FaultIDs(), plan.FaultIDs(), compute.TroubleIDs()) {
		if _, ok := Lookup(id); !ok {
			t.Errorf("%s can be reported and stands not in the catalog", id)
		}
	}
}

func TestLookupOfNothing(t *testing.T) {
	if _, ok := Lookup("yaml/none"); ok {
		t.Error("an id that is not in the catalog was found")
	}
}
