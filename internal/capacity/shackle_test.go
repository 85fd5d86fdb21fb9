package capacity

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestShacklePullFactor: 0 to 5, 6 to 45 and 46 to 90 deg from the line at
// right angles to the pin (bands read in WAC 296-155-33905, factors common
// practice). What lies between two bands belongs to the worse.
func TestShacklePullFactor(t *testing.T) {
	for _, c := range []struct {
		off, factor float64
		ok          bool
	}{
		{0, 1, true}, {5, 1, true}, {5 + 1e-9, 1, true},
		{5.01, 0.70, true}, {5.5, 0.70, true}, {6, 0.70, true}, {45, 0.70, true},
		{45.01, 0.50, true}, {45.5, 0.50, true}, {46, 0.50, true}, {90, 0.50, true}, {90 + 1e-9, 0.50, true},
		{90.01, 0, false}, {180, 0, false}, {-0.01, 0, false}, {-180, 0, false},
		{math.NaN(), 0, false}, {math.Inf(1), 0, false}, {math.Inf(-1), 0, false},
	} {
		if got, ok := ShacklePullFactor(c.off); got != c.factor || ok != c.ok {
			t.Errorf("%g deg: %g, %t; not %g, %t", c.off, got, ok, c.factor, c.ok)
		}
	}
}

func TestFurtherOffAShackleIsRatedNoHigher(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		near := rapid.Float64Range(0, 180).Draw(t, "near")
		far := rapid.Float64Range(near, 180).Draw(t, "far")
		a, okNear := ShacklePullFactor(near)
		b, okFar := ShacklePullFactor(far)
		if b > a || a > 1 || okFar && !okNear || okNear != (a > 0) {
			t.Fatalf("%g deg: %g, %t; %g deg: %g, %t", near, a, okNear, far, b, okFar)
		}
	})
}
