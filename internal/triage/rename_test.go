package triage

import (
	"slices"
	"testing"

	"liftlint/internal/finding"
)

// TestRename: under its new name the same is known of a plan, and no more.
func TestRename(t *testing.T) {
	fs := []finding.Finding{{Rule: "a/plain", Key: "k1", Severity: finding.Error}, {Rule: "a/graded", Key: "k2", Grade: "bad", Severity: finding.Error}}
	b, _ := taken(fs)
	if err := b.Rename("p", "q"); err != nil {
		t.Fatal(err)
	}
	b, _ = again(t, b)
	for _, f := range Run(slices.Clone(fs), Known(b, "q", plain())) {
		if f.Aside == nil {
			t.Errorf("%+v", f)
		}
	}
	for _, f := range Run(slices.Clone(fs), Known(b, "p", plain())) {
		if f.Aside != nil {
			t.Errorf("under the old name: %+v", f)
		}
	}
	if err := b.Rename("p", "r"); err == nil {
		t.Error("a plan that is not known")
	}
	other, _ := taken(fs)
	b.Plans = append(b.Plans, other.Plans...)
	if err := b.Rename("q", "p"); err == nil {
		t.Error("on to a plan that is known")
	}
}
