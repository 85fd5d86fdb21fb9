package mechanics

import (
	"fmt"
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

// Statics, exact: a spreader carries W on two top legs at b from horizontal,
// T = W/(2 sin b); plumb lower slings carry W/2 each.
func TestSpreaderTopLegs(t *testing.T) {
	const w = 1000 * gravity
	for _, deg := range []float64{30, 45, 60, 75} {
		b := deg * math.Pi / 180
		m := spreader(4, 2*math.Tan(b), 3, 0.01, 1000, []r3.Vec{vec(-2, 0, 0.5), vec(2, 0, 0.5)}, 1e9)
		r := steady(t, m)
		checkBalance(t, m, r)
		for i := range 2 {
			near(t, "top leg", r.Lines[i].TensionN/w, 1/(2*math.Sin(b)), 1e-3)
			near(t, "angle", r.Lines[i].AngleFromHorizontalDeg, deg, 0.02)
			near(t, "lower sling", r.Lines[i+2].TensionN/w, 0.5, 1e-3)
		}
		if r.Bodies[0].HasHookOffset || r.Bodies[1].HasHookOffset {
			t.Error("no body of these hangs from the hook alone")
		}
	}
}

// The own mass of the bar counts in the upper legs alone.
func TestSpreaderOwnMass(t *testing.T) {
	m := spreader(4, 2, 3, 500, 1000, []r3.Vec{vec(-2, 0, 0.5), vec(2, 0, 0.5)}, 1e9)
	r := steady(t, m)
	near(t, "top leg", r.Lines[0].TensionN, 1500*gravity/math.Sqrt2, 10)
	near(t, "lower sling", r.Lines[2].TensionN, 500*gravity, 1)
	near(t, "hook", r.Hooks[0].LoadN.Z, -1500*gravity, 0.1)
}

// Derived: bar 4 m, bridle 2 m, drop 3 m, center of gravity above the points.
// Points 2 m apart turn over from 0.64 m; points 5 m apart still stand at 2.3 m,
// which is above the bridle's own 2 m: the rule of thumb fails both ways.
func TestSpreaderFailsBothWays(t *testing.T) {
	verdict := func(apart, above float64) Verdict {
		return solve(t, spreader(4, 2, 3, 1, 1000, rectangle(apart, 2, -above), 1e9)).Verdict
	}
	if v := verdict(5, 2.3); v != Steady {
		t.Errorf("5 m apart, 2.3 m above: %q", v)
	}
	lo, hi := 0.1, 2.0
	for range 30 {
		if mid := (lo + hi) / 2; verdict(2, mid) == Steady {
			lo = mid
		} else {
			hi = mid
		}
	}
	near(t, "critical height, points 2 m apart", lo, 0.64, 0.01)
}

// A lifting beam on one top pin, statics: its tilt is atan(e/(H - h)), with the
// pin H above the bottom holes, the center of gravity of all h above them and e
// to the side.
func TestLiftingBeamTilt(t *testing.T) {
	const top, e, load, beam = 0.5, 0.1, 1000.0, 200.0
	m := Model{Bodies: []Body{{Name: "beam", MassKg: beam, CenterOfGravity: vec(0, 0, 0.25)}, {Name: "load", MassKg: load}}}
	m.Lines = []Line{
		{From: Hook(vec(0, 0, 10)), To: Anchor{0, vec(0, 0, top)}, LengthM: 2, StiffnessN: 1e9},
		{From: Anchor{0, vec(e, 0, 0)}, To: Anchor{1, vec(0, 0, 0.3)}, LengthM: 2, StiffnessN: 1e9},
	}
	r, err := Solve(m, Options{})
	if err != nil || r.Verdict != Steady {
		t.Fatalf("%v %+v", err, r)
	}
	center := vec(e*load/(load+beam), 0, 0.25*beam/(load+beam))
	want := degrees(math.Atan2(center.X, top-center.Z))
	near(t, "tilt", r.Balance.Bodies[0].TiltDeg, want, 1e-4)
	near(t, "load hangs plumb", r.Balance.Bodies[1].TiltDeg, 0, 1e-6)
	checkBalance(t, m, r.Balance)
}

// A chain of bodies, each under the last: tensions add up from below.
func TestChainOfBodies(t *testing.T) {
	var m Model
	from := Hook(vec(0, 0, 30))
	for i := range 5 {
		m.Bodies = append(m.Bodies, Body{Name: fmt.Sprint(i), MassKg: 100})
		m.Lines = append(m.Lines, Line{From: from, To: Anchor{i, vec(0, 0, 0.5)}, LengthM: 2, StiffnessN: 1e7})
		from = Anchor{i, vec(0, 0, -0.5)}
	}
	r := steady(t, m)
	for i, l := range r.Lines {
		near(t, "tension", l.TensionN, float64(5-i)*100*gravity, 1e-3)
	}
	checkBalance(t, m, r)
}

// Two hooks, derived: with the center of gravity z below the pick line and tilt
// a, the higher hook gains W (z/L) tan a; above it, the lower one gains.
func TestTwoHooksOnATiltedLoad(t *testing.T) {
	const l, w = 6.0, 2000 * gravity
	for _, z := range []float64{0.5, 1.2} {
		for _, deg := range []float64{2, 5, 10} {
			a := deg * math.Pi / 180
			m := hung(2000, []r3.Vec{vec(-l/2, 0, z), vec(l/2, 0, z)}, []float64{4, 4}, 1e10)
			// Plumb lines over where the points stand once the load has tilted.
			at := TurnBy(-a, vec(0, 1, 0))
			for i := range m.Lines {
				p := at.World(m.Lines[i].To.At)
				m.Lines[i].From = Hook(vec(p.X, 0, p.Z+4))
			}
			r := steady(t, m)
			near(t, "tilt", r.Bodies[0].TiltDeg, deg, 1e-3)
			near(t, "higher hook", r.Lines[1].TensionN/w, 0.5+z/l*math.Tan(a), 1e-4)
		}
	}
}

// The other sign: with the center of gravity z above the pick line the lower hook
// gains W (z/L) tan a. Two legs across from each hook keep the load from rolling.
func TestTwoHooksHoldingALoadByItsBase(t *testing.T) {
	const l, w = 6.0, 2000 * gravity
	for _, z := range []float64{0.5, 1.2} {
		for _, deg := range []float64{2, 5, 10} {
			a := deg * math.Pi / 180
			at := TurnBy(-a, vec(0, 1, 0))
			m := Model{Bodies: []Body{{Name: "load", MassKg: 2000}}}
			for _, x := range []float64{-l / 2, l / 2} {
				p := at.World(vec(x, 0, -z))
				for _, y := range []float64{-1, 1} {
					m.Lines = append(m.Lines, rope("leg", math.Hypot(5, 1), 1e10, Hook(vec(p.X, 0, p.Z+5)), Anchor{0, vec(x, y, -z)}))
				}
			}
			r := steady(t, m)
			near(t, "tilt", r.Bodies[0].TiltDeg, deg, 1e-3)
			near(t, "higher hook", -r.Hooks[1].LoadN.Z/w, 0.5-z/l*math.Tan(a), 1e-4)
			near(t, "lower hook", -r.Hooks[0].LoadN.Z/w, 0.5+z/l*math.Tan(a), 1e-4)
		}
	}
}

// Statics: a lifting beam on one pin, its load on two plumb slings of one length that
// stand as far apart below as above. Load and beam stay parallel, so the load's own
// center of gravity, z below its points and e off the middle, counts as if it hung in
// the beam: tilt = atan(e/(H + z)), H the pin above the lower holes.
func TestLiftingBeamWithItsLoadParallel(t *testing.T) {
	const top, e = 0.5, 0.05
	for _, z := range []float64{0, 0.2, 1} {
		m := Model{Bodies: []Body{{Name: "beam", MassKg: 0.01}, {Name: "load", MassKg: 6000}}}
		m.Lines = []Line{
			rope("top", 3, 1e11, Hook(vec(0, 0, 10)), Anchor{0, vec(0, 0, top)}),
			rope("left", 2, 1e11, Anchor{0, vec(-1.5, 0, 0)}, Anchor{1, vec(-1.5-e, 0, z)}),
			rope("right", 2, 1e11, Anchor{0, vec(1.5, 0, 0)}, Anchor{1, vec(1.5-e, 0, z)}),
		}
		if z == 0 { // else the load rolls about the line of its points
			m.Bodies[1].CenterOfGravity.Z = -1e-3
		}
		r, err := Solve(m, Options{})
		if err != nil || r.Verdict != Steady {
			t.Fatalf("%v %+v", err, r)
		}
		want := degrees(math.Atan(e / (top + math.Max(z, 1e-3))))
		near(t, "tilt of the beam", r.Balance.Bodies[0].TiltDeg, want, 1e-3)
		near(t, "tilt of the load", r.Balance.Bodies[1].TiltDeg, want, 1e-3)
	}
}
