package capacity

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestChokeFactor: over 120 deg the whole rating, 90 to 120: 87 %, 60 to 89: 74,
// 30 to 59: 62, 0 to 29: 49 (ASME B30.9, as trade tables give it; common
// practice). What lies between two bands has the lower factor.
func TestChokeFactor(t *testing.T) {
	for _, c := range []struct{ deg, factor float64 }{
		{180, 1}, {135, 1}, {127.8, 1}, {121, 1}, {120.01, 1},
		{120 + 1e-9, 0.87}, {120, 0.87}, {105, 0.87}, {90, 0.87}, {90 - 1e-9, 0.87},
		{89.99, 0.74}, {89.5, 0.74}, {89, 0.74}, {60, 0.74},
		{59.99, 0.62}, {59.5, 0.62}, {59, 0.62}, {30, 0.62},
		{29.99, 0.49}, {29.5, 0.49}, {29, 0.49}, {0, 0.49},
	} {
		if got, err := ChokeFactor(c.deg); err != nil || got != c.factor {
			t.Errorf("%g deg: %g, %v; not %g", c.deg, got, err, c.factor)
		}
	}
	for _, deg := range []float64{-0.01, -135, 180.01, 360, math.NaN(), math.Inf(1), math.Inf(-1)} {
		if got, err := ChokeFactor(deg); err == nil || got != 0 {
			t.Errorf("%g deg: %g", deg, got)
		}
	}
}

func TestWiderChokeIsRatedNoLower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		narrow := rapid.Float64Range(0, 180).Draw(t, "narrow")
		wide := rapid.Float64Range(narrow, 180).Draw(t, "wide")
		a, errA := ChokeFactor(narrow)
		b, errB := ChokeFactor(wide)
		if errA != nil || errB != nil || !(a > 0 && a <= b && b <= 1) {
			t.Fatalf("%g deg: %g, %v; %g deg: %g, %v", narrow, a, errA, wide, b, errB)
		}
	})
}
