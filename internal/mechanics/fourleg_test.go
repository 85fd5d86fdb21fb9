package mechanics

import (
	"fmt"
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

// Derived statics: four equal legs on a level rectangle b long, hook H above the
// points, center of gravity h above them and e off center. The line from hook to
// center of gravity meets the plane of the points at e H/(H-h), so the far legs
// go slack from e = (b/2)(1 - h/H).
func TestFourEqualLegsGoSlackAtOffset(t *testing.T) {
	const b, hook, mass = 4.0, 5.0, 2000.0
	for _, h := range []float64{-2, -1, -0.3, 0.4} {
		limit := b / 2 * (1 - h/hook)
		legs := func(e float64) Result {
			points := shifted(rectangle(b, 2, -h), vec(-e, 0, 0))
			l := math.Sqrt(b*b/4 + 1 + hook*hook)
			r, err := Solve(hung(mass, points, []float64{l, l, l, l}, 1e11), Options{MaxTiltDeg: 60})
			if err != nil {
				t.Fatal(err)
			}
			return r
		}
		in := legs(0.999 * limit)
		if in.Verdict != Steady || in.Balance.Lines[0].Slack || in.Balance.Lines[3].Slack {
			t.Errorf("h %g: inside the limit: %+v", h, in)
		}
		out := legs(1.001 * limit)
		if h > 0 { // two legs left, center of gravity above their points
			if out.Verdict != Overturns {
				t.Errorf("h %g: beyond the limit: %q", h, out.Verdict)
			}
		} else if out.Verdict != Steady || !out.Balance.Lines[0].Slack || !out.Balance.Lines[3].Slack || out.Balance.Lines[1].Slack {
			t.Errorf("h %g: beyond the limit: %+v", h, out)
		}
	}
}

// Derived statics: legs of 22 mm rope 5 m long, stretched on average by half the
// rope's diameter d; one diagonal longer by d/4, d/2, d. The short diagonal then
// carries 1.25, 1.5, 2 times the mean, and in the last case all.
func TestOneDiagonalLonger(t *testing.T) {
	const d, l, ea = 0.022, 5.0, 0.455 * 0.022 * 0.022 * 75e9
	points := rectangle(3, 2, 0.5)
	rise := math.Sqrt(l*l - 1.5*1.5 - 1)
	mean := ea * d / (2 * l)
	mass := 4 * mean * (rise / l) / gravity
	for _, c := range []struct{ longer, factor float64 }{{0, 1}, {d / 4, 1.25}, {d / 2, 1.5}, {d, 2}, {2 * d, 2}} {
		m := hung(mass, points, []float64{l, l + c.longer, l, l + c.longer}, ea)
		b := steady(t, m)
		for i, want := range []float64{c.factor, 2 - c.factor} {
			near(t, fmt.Sprintf("leg %d, %g m longer", i, c.longer), b.Lines[i].TensionN/mean, want, 0.015)
		}
		// The bound: one diagonal carries all, whatever the lengths.
		near(t, "bound", b.Lines[1].Bound.TensionN/mean, 2, 0.015)
		if b.Rests != 1 {
			t.Errorf("rests: %d", b.Rests)
		}
	}
}

// A skid lifted at its base, 1 m below its center of gravity, with one diagonal
// longer than the stretch makes up: it can not stay on the short diagonal, tips
// a little to one side and rests on a third leg. Common, and steady.
func TestHighSkidWithUnequalDiagonalsRestsOnThreeLegs(t *testing.T) {
	points := rectangle(4, 3, -1)
	m := fitted(5000, points, 4, 1e9)
	m.Lines[1].LengthM += 0.01
	m.Lines[3].LengthM += 0.01
	b := steady(t, m)
	if b.Rests != 2 {
		t.Errorf("rests: %d, want one to either side", b.Rests)
	}
	carrying := 0
	for _, l := range b.Lines {
		if !l.Slack {
			carrying++
		}
	}
	if carrying != 3 || b.Bodies[0].TiltDeg < 0.05 || b.Bodies[0].TiltDeg > 1 {
		t.Errorf("%d legs carry, tilt %g deg", carrying, b.Bodies[0].TiltDeg)
	}
	if !b.IntendedBalances {
		t.Error("fitted legs would hold the skid level")
	}
}

// One leg much too long simply hangs; the other three are determinate.
func TestOneLegTooLongLeavesThree(t *testing.T) {
	points := []r3.Vec{vec(2, 0, 0.3), vec(-1, 1.7, 0.3), vec(-1, -1.7, 0.3), vec(0.3, 0.2, 0.3)}
	m := fitted(3000, points, 4, 1e9)
	m.Lines[3].LengthM += 1
	c, ok := threeLegs(points[:3], []float64{m.Lines[0].LengthM, m.Lines[1].LengthM, m.Lines[2].LengthM})
	b := steady(t, m)
	if !ok || !b.Lines[3].Slack || b.Lines[3].TensionN != 0 {
		t.Fatalf("%v %+v", ok, b.Lines[3])
	}
	for i, want := range c.tensions {
		near(t, "tension", b.Lines[i].TensionN/(3000*gravity), want, 1e-3)
	}
}

// Points level with the center of gravity, one diagonal longer than the stretch
// makes up: the load rocks on the short diagonal until another leg catches it.
// It does not overturn, and the result says that it rocks.
func TestLoadThatRocksOnADiagonal(t *testing.T) {
	m := fitted(5000, rectangle(4, 3, 0), 4, 1e9)
	m.Lines[1].LengthM += 0.01
	m.Lines[3].LengthM += 0.01
	b := steady(t, m)
	if !b.Rocks || b.RightingM > 1e-6 || b.Bodies[0].TiltDeg > 1 {
		t.Errorf("%+v", b)
	}
}
