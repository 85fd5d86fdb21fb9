package hitch

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestHoldsRatio: half a turn at 0.3 holds 2.57 to 1 and a whole one at 0.5
// about 23 to 1, as tables of belt friction have it (from memory).
func TestHoldsRatio(t *testing.T) {
	for _, c := range []struct{ mu, turned, ratio, tolerance float64 }{
		{0, 3, 1, 0}, {0.3, 0, 1, 0},
		{0.3, math.Pi, 2.57, 0.005}, {0.5, 2 * math.Pi, 23.1, 0.05},
		{-0.1, 3, 0, 0}, {0.1, -3, 0, 0}, {math.NaN(), 3, 0, 0}, {0.1, math.NaN(), 0, 0},
		{math.Inf(1), 0, 0, 0}, {0, math.Inf(1), 0, 0},
	} {
		near(t, "ratio", HoldsRatio(c.mu, c.turned), c.ratio, c.tolerance)
	}
}

// TestHoldsRatioStepByStep: on a polygon of many equal bends each bend presses
// with the resultant of the two forces on it and holds mu times that at most:
// greater - lesser, along the bisector of the bend, is mu times what presses.
func TestHoldsRatioStepByStep(t *testing.T) {
	const bends = 20_000
	for _, mu := range []float64{0.1, 0.2, 0.45} {
		for _, turned := range []float64{0.5, math.Pi, 3 * math.Pi} {
			sin, cos := math.Sincos(turned / bends / 2)
			force := 1.0
			for range bends {
				force *= (cos + mu*sin) / (cos - mu*sin)
			}
			near(t, "against steps", HoldsRatio(mu, turned)/force, 1, 1e-6)
		}
	}
}

func TestNeededFriction(t *testing.T) {
	for _, c := range []struct{ lean, mu float64 }{
		{0, 0}, {30, 1 / math.Sqrt(3)}, {-30, 1 / math.Sqrt(3)}, {45, 1}, {60, math.Sqrt(3)},
	} {
		near(t, "needed", NeededFriction(c.lean), c.mu, 1e-12)
	}
	for _, lean := range []float64{90, 120, -90, math.NaN(), math.Inf(1)} {
		if got := NeededFriction(lean); !math.IsInf(got, 1) {
			t.Errorf("%g deg needs %g", lean, got)
		}
	}
}

func TestSideLean(t *testing.T) {
	for _, c := range []struct{ axial, up, deg float64 }{
		{0, 2, 0}, {1, 1, 45}, {-3, 3, 45}, {2, 0, 90}, {0, -1, 180}, {1e-300, 1e-300, 45},
	} {
		near(t, "lean", SideLeanDeg(c.axial, c.up), c.deg, 1e-12)
	}
	for _, c := range [][2]float64{{0, 0}, {math.NaN(), 1}, {1, math.NaN()}, {math.Inf(1), 1}} {
		if got := SideLeanDeg(c[0], c[1]); !math.IsNaN(got) {
			t.Errorf("%v leans by %g", c, got)
		}
	}
}

// axialOverPressed is the axial pull of both parts of a basket over all that
// presses it on a round body: an element presses with force times the angle it
// turns. The parts leave at angles from level, in the cross-section, with so
// much axial pull for each unit of force across.
func axialOverPressed(axialLeft, axialRight, leftRad, rightRad float64) float64 {
	const steps = 1000
	pressed := 0.0
	for range steps {
		pressed += (leftRad + rightRad) / steps
	}
	return (axialLeft + axialRight) / pressed
}

// TestNeededFrictionIsEnough on a round body, however the parts spread.
func TestNeededFrictionIsEnough(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		left := rapid.Float64Range(0.05, 3).Draw(t, "left, from level")
		right := rapid.Float64Range(0.05, 3).Draw(t, "right, from level")
		axialLeft := rapid.Float64Range(0, 3).Draw(t, "axial left")
		axialRight := rapid.Float64Range(0, 3).Draw(t, "axial right")
		needed := max(
			NeededFriction(SideLeanDeg(axialLeft, math.Sin(left))),
			NeededFriction(SideLeanDeg(axialRight, math.Sin(right))),
		)
		if exact := axialOverPressed(axialLeft, axialRight, left, right); exact > needed*(1+1e-9) {
			t.Fatalf("it needs %g, said to need %g", exact, needed)
		}
	})
}

// TestLeanFromTheCrossSectionIsNotEnough for parts that spread to 30 deg from
// horizontal and lean 20 deg out of the cross-section: it would say tan 20 deg.
func TestLeanFromTheCrossSectionIsNotEnough(t *testing.T) {
	axial, level := math.Tan(radians(20)), radians(30)
	exact := axialOverPressed(axial, axial, level, level)
	if tooLittle := NeededFriction(20); tooLittle > exact {
		t.Errorf("%g would be enough for %g", tooLittle, exact)
	}
	if enough := NeededFriction(SideLeanDeg(axial, math.Sin(level))); enough < exact {
		t.Errorf("%g is not enough for %g", enough, exact)
	}
}
