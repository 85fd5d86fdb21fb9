package junit

import (
	"strings"
	"testing"

	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

// TestGear: registers are told of as such, with what was not judged for want of a
// day, and one that can't be read with its faults.
func TestGear(t *testing.T) {
	sound := func(text string) string { // which records a rule does not apply to
		return strings.ReplaceAll(text, "outcome passed or passed_with_remarks", "outcome")
	}
	reporttest.EachGear(t, ".xml", func(run report.Run) string {
		got, _ := read(t, run)
		return got
	}, sound)
}
