package report_test

import (
	"context"
	"slices"
	"testing"

	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

// TestBaselineHasTheSameFingerprints as reports: one entry is found by the other.
func TestBaselineHasTheSameFingerprints(t *testing.T) {
	l, err := lint.New(lint.Options{Stage: policy.Review, Record: true})
	if err != nil {
		t.Fatal(err)
	}
	const file = "examples/filter-vessel.lift.yaml"
	r, err := l.Check(context.Background(), file, []byte(reporttest.Example(t, root, "filter-vessel.lift.yaml")))
	if err != nil || len(r.Recorded.Findings) < 5 {
		t.Fatal(err)
	}
	prints := report.Fingerprints(r)
	for _, k := range r.Recorded.Findings {
		i := slices.Index(prints, k.Fingerprint)
		if i < 0 || r.Findings[i].Rule != k.Rule || r.Stable(r.Findings[i].Key) != k.Key {
			t.Errorf("%s on %s has another fingerprint in reports", k.Rule, k.Key)
		}
	}
}
