package capacity

import (
	"math"
	"testing"

	"liftlint/internal/quantity"
)

// TestPublishedEfficiencies of MIL-DTL-3903F Table II.
func TestPublishedEfficiencies(t *testing.T) {
	for _, row := range published(t, "mil-dtl-3903f.csv") {
		got, ok := SpliceEfficiency(Termination(row["termination"]), row["core"], inches(t, row["diameter_in"]), ByAngle)
		if want := value(t, row["efficiency_percent"]) / 100; !ok || got != want {
			t.Errorf("type %s, %s in: %g, %t; published %g", row["type"], row["diameter_in"], got, ok, want)
		}
	}
}

// inches reads a size as the sources print it.
func inches(t *testing.T, size string) float64 {
	t.Helper()
	d, err := quantity.ParseLength(size + " in")
	if err != nil {
		t.Fatal(err)
	}
	return float64(d)
}

func TestSpliceEfficiency(t *testing.T) {
	for _, c := range []struct {
		end        Termination
		core       string
		diameterIn float64
		practice   BridlePractice
		efficiency float64
		ok         bool
	}{
		{FlemishSleeve, "iwrc", 0.25, ByAngle, 0.95, true},
		{TurnBackSleeve, "iwrc", 1, ByAngle, 0.95, true},
		{FlemishSleeve, "iwrc", 1.01, ByAngle, 0.925, true},
		{FlemishSleeve, "iwrc", 2, ByAngle, 0.925, true},
		{FlemishSleeve, "iwrc", 2.01, ByAngle, 0.90, true},
		{FlemishSleeve, "fiber", 1, ByAngle, 0.925, true},
		{TurnBackSleeve, "fiber", 1.125, ByAngle, 0.90, true},
		{FlemishSleeve, "", 1, ByAngle, 0, false},
		{FlemishSleeve, "odd", 1, ByAngle, 0, false},
		{HandTucked, "fiber", 0.375, ByAngle, 0.88, true},
		{HandTucked, "", 0.366, ByAngle, 0.88, true}, // 9.3 mm
		{HandTucked, "fiber", 0.3125, ByAngle, 0, false},
		{HandTucked, "fiber", 0.4375, ByAngle, 0.88, true}, // between sizes: the higher
		{HandTucked, "iwrc", 0.5, ByAngle, 0.86, true},
		{HandTucked, "fiber", 0.499, ByAngle, 0.88, true},
		{HiddenTuck, "fiber", 0.625, ByAngle, 0.84, true},
		{HandTucked, "fiber", 0.75, ByAngle, 0.82, true},
		{HandTucked, "fiber", 0.875, ByAngle, 0.80, true},
		{HandTucked, "fiber", 3, ByAngle, 0.80, true},
		{Socket, "", 1, ByAngle, 1, true},
		{FlemishSleeve, "", 1, ByBand, 0.9, true},
		{TurnBackSleeve, "fiber", 3, ByBand, 0.9, true},
		{HandTucked, "", 0.3, ByBand, 0.8, true},
		{HiddenTuck, "iwrc", 1, ByBand, 0.8, true},
		{Socket, "iwrc", 1, ByBand, 1, true},
		{"", "iwrc", 1, ByAngle, 0, false},
		{"", "iwrc", 1, ByBand, 0, false},
		{"clips", "iwrc", 1, ByAngle, 0, false},
		{FlemishSleeve, "iwrc", 1, "", 0, false},
		{FlemishSleeve, "iwrc", 0, ByAngle, 0, false},
		{FlemishSleeve, "iwrc", math.NaN(), ByBand, 0, false},
	} {
		got, ok := SpliceEfficiency(c.end, c.core, c.diameterIn*inchM, c.practice)
		if got != c.efficiency || ok != c.ok {
			t.Errorf("%+v: %g, %t", c, got, ok)
		}
	}
}

func TestBestSpliceEfficiency(t *testing.T) {
	for _, c := range []struct {
		core       string
		diameterIn float64
		practice   BridlePractice
		efficiency float64
		ok         bool
	}{
		{"iwrc", 1, ByAngle, 0.95, true},
		{"fiber", 1, ByAngle, 0.925, true},
		{"", 1, ByAngle, 0.95, true},
		{"odd", 2.5, ByAngle, 0.90, true},
		{"fiber", 1, ByBand, 0.9, true},
		{"", 1, ByBand, 0.9, true},
		{"iwrc", 1, "", 0, false},
		{"iwrc", 0, ByAngle, 0, false},
	} {
		if got, ok := BestSpliceEfficiency(c.core, c.diameterIn*inchM, c.practice); got != c.efficiency || ok != c.ok {
			t.Errorf("%+v: %g, %t", c, got, ok)
		}
	}
}
