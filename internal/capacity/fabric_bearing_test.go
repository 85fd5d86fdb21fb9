package capacity

import (
	"math"
	"testing"
)

// TestBearingPressure: 5300 lbf on a shackle of 0.62 in by a round sling 1.22 in wide
// come to the 7000 psi that round slings are allowed (WSTDA-RS-1, from memory; the
// width worked back), and 48 N/mm2 are 7000 psi to a percent (NIST SP 811).
func TestBearingPressure(t *testing.T) {
	const lbf, inch = 0.45359237 * 9.80665, 0.0254
	got, err := BearingPressurePa(5300*lbf, 0.62*inch, 1.22*inch)
	if psi := got / (lbf / inch / inch); err != nil || math.Abs(psi-7000) > 15 {
		t.Errorf("%.0f psi, %v", psi, err)
	}
	if math.Abs(7000*lbf/inch/inch/48e6-1) > 0.01 {
		t.Error("7000 psi are not 48 N/mm2")
	}
	for _, x := range [][3]float64{{-1, 1, 1}, {1, 0, 1}, {1, 1, 0}, {math.NaN(), 1, 1}, {1, math.Inf(1), 1}} {
		if _, err := BearingPressurePa(x[0], x[1], x[2]); err == nil {
			t.Errorf("%v is a bearing", x)
		}
	}
}

// TestEveryWebEyeGoesOver: an eye of 200 mm over 57 mm; its sides then stand 19 deg
// apart, by the geometry of other eyes.
func TestEveryWebEyeGoesOver(t *testing.T) {
	for mm, want := range map[float64]bool{16: true, 57: true, 200 / 3.5: true, 58: false, 80: false} {
		if EveryWebEyeGoesOver(mm/1000) != want {
			t.Errorf("%g mm: %v", mm, !want)
		}
	}
	if EveryWebEyeGoesOver(math.NaN()) {
		t.Error("something of no thickness")
	}
	if deg := EyeIncludedAngleDeg(usualWebEyeM, usualWebEyeM/leastEyeOverHook); deg < 18 || deg > 20 {
		t.Errorf("%.1f deg", deg)
	}
}
