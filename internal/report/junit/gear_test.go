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
	for name, run := range map[string]report.Run{
		"gear.xml":        reporttest.Gear(t, "2026-12-04"),
		"gear_no_day.xml": reporttest.Gear(t, ""),
		"gear_faulty.xml": reporttest.FaultyGear(t),
	} {
		got, _ := read(t, run)
		reporttest.Golden(t, name, got)
		reporttest.NeverSaysSafe(t, strings.ReplaceAll(got, "outcome passed or passed_with_remarks", "outcome")) // which records a rule does not apply to
	}
}
