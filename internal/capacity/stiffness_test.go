package capacity

import (
	"math"
	"testing"

	"liftlint/internal/gear"
)

// TestStiffnessStaysWithinRopeTables: metallic area 0.45 to 0.46 d^2 with a
// wire core and 0.38 to 0.39 d^2 with a fiber core (rope tables, read), at
// 60 to 100 GPa (common practice). The figure is at the stiff end of both.
func TestStiffnessStaysWithinRopeTables(t *testing.T) {
	const d = 0.022
	for _, c := range []struct {
		core      gear.Core
		low, high float64
	}{
		{gear.CoreIWRC, 0.45 * d * d * 60e9, 0.46 * d * d * 100e9},
		{gear.CoreFiber, 0.38 * d * d * 60e9, 0.39 * d * d * 100e9},
		{gear.CoreUnknown, 0.38 * d * d * 60e9, 0.46 * d * d * 100e9},
	} {
		got := AxialStiffnessN(d, c.core)
		if got < c.low || got > c.high*(1+1e-12) {
			t.Errorf("core %q: %g N lies outside %g to %g", c.core, got, c.low, c.high)
		}
		if math.Abs(got-c.high) > 1e-9*c.high {
			t.Errorf("core %q: %g N is not the stiff end, %g", c.core, got, c.high)
		}
	}
	// A 22 mm rope with a wire core, worked by hand: 222.64 mm2 x 100 kN/mm2.
	if got := AxialStiffnessN(d, gear.CoreIWRC); math.Abs(got-22.264e6) > 1e3 {
		t.Errorf("EA of 22 mm is %g N, not 22.264 MN", got)
	}
}
