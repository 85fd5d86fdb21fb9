package capacity

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestEyeIncludedAngle: common practice takes a body half as wide as the eye
// is long for 39 deg, and asks for 2.43 widths of length for 30 deg; the rest
// from the right triangle between crotch, center and tangent.
func TestEyeIncludedAngle(t *testing.T) {
	for _, c := range []struct{ eye, body, deg, tolerance float64 }{
		{1, 0.5, 39, 0.5},
		{2.43, 1, 30, 0.05},
		{1.5, 1, 60, 1e-9}, // the center is one width from the crotch: sin 30 deg
		{1, 1, 180, 0},
		{0.9, 1, 180, 0},
		{1, 1e-9, 0, 1e-6},
	} {
		if got := EyeIncludedAngleDeg(c.eye, c.body); math.Abs(got-c.deg) > c.tolerance {
			t.Errorf("eye %g over body %g opens to %g, not %g deg", c.eye, c.body, got, c.deg)
		}
	}
}

// TestTangentsMeetTheBody draws the eye anew: two lines from the crotch at the
// angle given touch a circle of the body's width whose far side lies the eye's
// length away.
func TestTangentsMeetTheBody(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		body := rapid.Float64Range(0.01, 0.5).Draw(t, "body")
		eye := body * rapid.Float64Range(1.001, 20).Draw(t, "eye over body")
		half := EyeIncludedAngleDeg(eye, body) / 2 * math.Pi / 180
		center := eye - body/2
		if off := center * math.Sin(half); math.Abs(off-body/2) > 1e-9 {
			t.Fatalf("the side passes the body's center at %g, not at %g", off, body/2)
		}
	})
}

func TestWiderBodyOpensTheEyeFurther(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		eye := rapid.Float64Range(0.05, 2).Draw(t, "eye")
		a := rapid.Float64Range(0.001, 3).Draw(t, "body")
		b := rapid.Float64Range(0.001, 3).Draw(t, "another")
		if a > b {
			a, b = b, a
		}
		x, y := EyeIncludedAngleDeg(eye, a), EyeIncludedAngleDeg(eye, b)
		if x > y || x < 0 || y > 180 {
			t.Fatalf("%g opens it to %g, %g to %g", a, x, b, y)
		}
	})
}
