package markdown

import (
	"testing"

	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

// TestGear: registers are told of as such, with what was not judged for want of a
// day, and one that can't be read with its faults.
func TestGear(t *testing.T) {
	for name, run := range map[string]report.Run{
		"gear.md":        reporttest.Gear(t, "2026-12-04"),
		"gear_no_day.md": reporttest.Gear(t, ""),
		"gear_faulty.md": reporttest.FaultyGear(t),
	} {
		got := written(t, run, Options{})
		reporttest.Golden(t, name, got)
		reporttest.NeverSaysSafe(t, got)
	}
}
