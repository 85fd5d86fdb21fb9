package sarif

import (
	"testing"

	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

// TestGear: registers are told of as such, with what was not judged for want of a
// day, and one that can't be read with its faults.
func TestGear(t *testing.T) {
	for name, run := range map[string]report.Run{
		"gear.sarif":        reporttest.Gear(t, "2026-12-04"),
		"gear_no_day.sarif": reporttest.Gear(t, ""),
		"gear_faulty.sarif": reporttest.FaultyGear(t),
	} {
		got, _ := written(t, run, Options{Stage: "review"})
		got = withoutBuiltIn(t, got)
		reporttest.Golden(t, name, got)
		reporttest.NeverSaysSafe(t, got)
	}
}
