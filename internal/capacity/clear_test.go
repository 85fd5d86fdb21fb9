package capacity

import (
	"math"
	"testing"
)

func TestClearRope(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct{ length, upperEye, upperSplice, lowerEye, lowerSplice, clear float64 }{
		{4, 0.5, 0.125, 0.25, 0.0625, 3.0625}, // worked by hand
		{4, 0, 0, 0, 0, 4},
		{0.75, 0.25, 0.125, 0.25, 0.125, 0},
		{0.5, 0.25, 0.25, 0.25, 0.25, 0},
		{0, 0, 0, 0, 0, 0},
		{nan, 0.1, 0.1, 0.1, 0.1, 0},
		{4, nan, 0.1, 0.1, 0.1, 0},
	} {
		if got := ClearRopeM(c.length, c.upperEye, c.upperSplice, c.lowerEye, c.lowerSplice); got != c.clear {
			t.Errorf("%+v: %g m clear", c, got)
		}
	}
}

func TestSpliceLengthRange(t *testing.T) {
	for end, want := range map[Termination][2]float64{
		FlemishSleeve: {3, 8}, TurnBackSleeve: {3, 8},
		HandTucked: {8, 30}, HiddenTuck: {8, 30},
		Socket: {0, 0}, "": {3, 30}, "clips": {3, 30},
	} {
		if least, most := SpliceLengthRangeD(end); [2]float64{least, most} != want {
			t.Errorf("%q: %g to %g d, not %g", end, least, most, want)
		}
	}
}

// TestUnknownSpliceSpansThoseOfEyes: what an unknown end could be, its range
// holds.
func TestUnknownSpliceSpansThoseOfEyes(t *testing.T) {
	least, most := SpliceLengthRangeD("")
	for _, end := range []Termination{FlemishSleeve, TurnBackSleeve, HandTucked, HiddenTuck} {
		if from, to := SpliceLengthRangeD(end); from < least || to > most || from >= to {
			t.Errorf("%q: %g to %g d lies outside %g to %g", end, from, to, least, most)
		}
	}
}
