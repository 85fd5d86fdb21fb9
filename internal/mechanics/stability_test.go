package mechanics

import (
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

func hasCause(r Result, c Cause) bool {
	for _, w := range r.Why {
		if w.Cause == c {
			return true
		}
	}
	return false
}

// wantOverturn also holds that no figure of an overturned load can be read.
func wantOverturn(t *testing.T, name string, m Model, causes ...Cause) {
	t.Helper()
	r := solve(t, m)
	if r.Verdict != Overturns || r.Balance != nil {
		t.Errorf("%s: verdict %q, balance %+v", name, r.Verdict, r.Balance)
	}
	for _, c := range causes {
		if !hasCause(r, c) {
			t.Errorf("%s: no %q among %+v", name, c, r.Why)
		}
	}
	for _, w := range r.Why {
		if !strings.Contains(w.Text, "load") {
			t.Errorf("%s: %q does not name the body", name, w.Text)
		}
	}
}

// Trade rule: two legs with the center of gravity above the line of their
// points always roll over, however high the hook.
func TestTwoLegsBelowCenterOfGravityRollOver(t *testing.T) {
	for _, hook := range []float64{1, 3, 10, 50} {
		for _, below := range []float64{1, 0.1, 0.001} {
			ends := []r3.Vec{vec(-2, 0, -below), vec(2, 0, -below)}
			wantOverturn(t, "symmetric", fitted(1000, ends, hook, 1e8), PointsBelow, UnsteadyAsIntended)
			wantOverturn(t, "1 mm off", fitted(1000, shifted(ends, vec(0, 0.001, 0)), hook, 1e8), PointsBelow, Turned)
			wantOverturn(t, "uneven legs", fitted(1000, []r3.Vec{vec(-1, 0, -below), vec(2, 0, -2*below)}, hook, 1e8), PointsBelow)
		}
	}
}

func TestTwoLegsAboveCenterOfGravityHang(t *testing.T) {
	for _, above := range []float64{1, 0.1, 0.001} {
		b := steady(t, fitted(1000, []r3.Vec{vec(-2, 0, above), vec(2, 0, above)}, 3, 1e8))
		near(t, "righting, as a pendulum from the line of points", b.RightingM, math.Min(above, 3), 1e-3)
		if b.Bodies[0].RollsFreely {
			t.Error("rolls freely")
		}
	}
}

func TestCenterOfGravityOnTheLineRollsFreely(t *testing.T) {
	b := steady(t, fitted(1000, []r3.Vec{vec(-2, 0, 0), vec(2, 0, 0)}, 3, 1e8))
	if !b.Bodies[0].RollsFreely {
		t.Error("a bar slung on its own axis rolls freely")
	}
}

func TestOneLeg(t *testing.T) {
	b := steady(t, fitted(1000, []r3.Vec{vec(0, 0, 0.5)}, 3, 1e8))
	near(t, "tension", b.Lines[0].TensionN, 1000*gravity, 1e-4)
	if b.Bodies[0].RollsFreely {
		t.Error("a turn about the plumb line is no roll")
	}
	wantOverturn(t, "below", fitted(1000, []r3.Vec{vec(0, 0, -0.5)}, 3, 1e8), PointsBelow, UnsteadyAsIntended)
	wantOverturn(t, "below, 1 mm off", fitted(1000, []r3.Vec{vec(0.001, 0, -0.5)}, 3, 1e8), PointsBelow, Turned)
	wantOverturn(t, "at the center of gravity", fitted(1000, []r3.Vec{vec(0, 0, 0)}, 3, 1e8), UnsteadyAsIntended)
	// Off to the side it hangs askew: atan(0.5/0.5).
	r := solve(t, fitted(1000, []r3.Vec{vec(0.5, 0, 0.5)}, 3, 1e8))
	if r.Verdict != Overturns || len(r.Why) != 1 {
		t.Fatalf("%+v", r)
	}
	near(t, "turn", r.Why[0].Measured, 45, 1e-6)
}

// A skid lifted at its base by four legs, center of gravity above the points:
// common and steady, level or not, with the lengths slings really have.
func TestSkidHeldAtItsBaseIsSteady(t *testing.T) {
	for _, longer := range [][4]float64{{}, {0.01, 0, 0, 0}, {0.02, 0, 0.01, 0.005}, {0, 0.015, 0, 0.015}} {
		m := fitted(5000, shifted(rectangle(5, 2, -0.8), vec(0.1, -0.05, 0)), 4, 2e7)
		for i, d := range longer {
			m.Lines[i].LengthM += d
		}
		b := steady(t, m)
		if b.Bodies[0].TiltDeg > 5 || !(b.RightingM > 0) {
			t.Errorf("%v: %+v", longer, b)
		}
	}
}

// Derived: four or three legs that meet at a hook make one stiff whole with the
// load, which swings like a pendulum from the hook, however high its center of
// gravity stands above the points, up to the hook.
func TestRightingOfStiffLegsIsThePendulum(t *testing.T) {
	for _, hook := range []float64{4, 1, 0.1} {
		b := steady(t, fitted(1000, rectangle(4, 3, -1), hook, 1e12))
		near(t, "righting", b.RightingM, hook, 1e-3*hook)
	}
}

// The limit itself counts as beyond it: nothing rights a body held exactly at
// its center of gravity. A hair to either side decides. With the hook level with
// the center of gravity, stretch alone (here under 0.1 mm) makes a pendulum.
func TestAtTheLimit(t *testing.T) {
	b := steady(t, fitted(1000, rectangle(4, 3, -1), 0, 1e9))
	if b.RightingM <= 0 || b.RightingM > 1e-4 {
		t.Errorf("righting %g m", b.RightingM)
	}
	near(t, "righting", steady(t, fitted(1000, rectangle(4, 3, -1), 0.001, 1e10)).RightingM, 0.001, 1e-5)
	wantOverturn(t, "hook 1 mm below", fitted(1000, rectangle(4, 3, -1), -0.001, 1e10), UnsteadyAsIntended)
	wantOverturn(t, "all at the center", fitted(1000, []r3.Vec{{}, {}}, 3, 1e9), UnsteadyAsIntended)
	// One leg askew by exactly the allowed turn, then by a little less and more.
	for _, c := range []struct {
		deg  float64
		want Verdict
	}{{19.999, Steady}, {20.001, Overturns}} {
		a := c.deg * math.Pi / 180
		r := solve(t, fitted(1000, []r3.Vec{vec(math.Sin(a), 0, math.Cos(a))}, 3, 1e8))
		if r.Verdict != c.want {
			t.Errorf("%g deg: %q", c.deg, r.Verdict)
		}
	}
}

// Elastic legs give way: a tall load on soft legs that would stand on stiff ones.
// At a hook height where stiff legs hold by a pendulum of 0.2 m, soft legs do not.
func TestSoftLegsLetATallLoadOver(t *testing.T) {
	stiff := fitted(1000, rectangle(1, 1, -4), 0.2, 1e9)
	b := steady(t, stiff)
	soft := fitted(1000, rectangle(1, 1, -4), 0.2, 3e5)
	r := solve(t, soft)
	if r.Verdict == Steady && r.Balance.RightingM >= b.RightingM {
		t.Errorf("soft legs right as well as stiff ones: %g, %g", r.Balance.RightingM, b.RightingM)
	}
}

func TestCenterOfGravityOutsideThePoints(t *testing.T) {
	for _, z := range []float64{-0.5, 0.5, 1} {
		wantOverturn(t, "outside", fitted(1000, shifted(rectangle(2, 2, z), vec(-3, 0, 0)), 4, 1e8), Turned)
	}
}

func TestLegsTooShort(t *testing.T) {
	m := hung(1000, rectangle(4, 3, 0.5), []float64{2, 2, 2, 2}, 1e7)
	r := solve(t, m)
	if r.Verdict != OutOfReach || r.Balance != nil {
		t.Fatalf("%+v", r)
	}
	if w := r.Why[0]; w.Cause != TooShort || len(w.Lines) != 4 || !strings.Contains(w.Text, "A, B, C, D") {
		t.Errorf("%+v", w)
	}
	two := solve(t, hung(1000, []r3.Vec{vec(-2, 0, 0.5), vec(2, 0, 0.5)}, []float64{1.5, 1.5}, 1e7))
	if two.Verdict != OutOfReach {
		t.Errorf("%+v", two)
	}
}

// The intended attitude counts, not the axes of the body.
func TestIntendedAttitude(t *testing.T) {
	at := TurnBy(math.Pi/6, vec(0, 1, 0))
	points := rectangle(4, 3, 1)
	for i, p := range points {
		points[i] = at.Body(p) // level once turned
	}
	m := fitted(1000, points, 4, 1e9)
	for i := range m.Lines {
		m.Lines[i].LengthM = r3.Norm(r3.Sub(vec(0, 0, 4), at.World(points[i])))
	}
	m.Bodies[0].Intended = at
	b := steady(t, m)
	near(t, "tilt", b.Bodies[0].TiltDeg, 0, 1e-6)
	near(t, "heading", b.Bodies[0].HeadingDeg, 0, 1e-6)
	m.Bodies[0].Intended = Attitude{}
	r := solve(t, m)
	if r.Verdict != Overturns {
		t.Fatalf("meant level: %+v", r)
	}
}

// TestSlackLineLeavesNoDoubt: a load that has come to hang plumb below one of two
// hooks stands, though nothing but the slack line of the other keeps it from
// turning about the vertical; one held by its base below its center of gravity
// falls all the same.
func TestSlackLineLeavesNoDoubt(t *testing.T) {
	hung := func(headX, headZ float64) Model {
		return Model{
			Bodies: []Body{{MassKg: 1000}},
			Lines: []Line{
				{From: Hook(r3.Vec{X: headX, Z: headZ + 5}), To: Anchor{At: r3.Vec{X: headX, Z: headZ}}, LengthM: 5, StiffnessN: 1e8},
				{From: Hook(r3.Vec{X: -1, Z: 4}), To: Anchor{At: r3.Vec{X: -1, Z: -3}}, LengthM: 7, StiffnessN: 1e8},
			},
		}
	}
	result, err := Solve(hung(0, 6), Options{})
	if err != nil || result.Verdict != Steady {
		t.Fatalf("%v %+v", err, result)
	}
	if lines := result.Balance.Lines; lines[0].Slack || !lines[1].Slack && lines[1].TensionN > 100 {
		t.Errorf("%g N and %g N", lines[0].TensionN, lines[1].TensionN)
	}
	if result, err := Solve(hung(0, -1), Options{}); err != nil || result.Verdict != Overturns {
		t.Errorf("held by its base: %v %+v", err, result)
	}
}
