package mechanics

import (
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
	"pgregory.net/rapid"
)

// drawFour draws a load on three to six legs, often off center, uneven, with
// legs that go slack; masses from 1 kg to 1000 t, legs from 0.2 to 60 m, EA up
// to 1e9 N.
func drawFour(t *rapid.T) Model {
	n := rapid.IntRange(3, 6).Draw(t, "legs")
	p, l := drawLegs(t, n, -0.1, 0.4)
	mass := rapid.SampledFrom([]float64{1, 40, 1000, 8650, 5e4, 1e6}).Draw(t, "mass")
	ratio := rapid.SampledFrom([]float64{100, 300, 3e3, 1e5, 1e8}).Draw(t, "EA over weight")
	m := hung(mass, p, l, min(mass*gravity*ratio, 1e9))
	m.Bodies[0].CenterOfGravity = vec(mm(rapid.Float64Range(-0.1, 0.1).Draw(t, "x")), mm(rapid.Float64Range(-0.1, 0.1).Draw(t, "y")), 0)
	return m
}

func TestForcesAndMomentsBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := drawFour(t)
		r, err := Solve(m, Options{MaxTiltDeg: 60})
		if err != nil {
			t.Fatal(err)
		}
		if r.Verdict == NoBalance {
			t.Fatalf("a load that must come to rest somewhere did not: %+v", r.Why)
		}
		if r.Balance != nil {
			checkBalance(t, m, r.Balance)
		}
	})
}

// Twice the mass on lines twice as stiff: the same shape, twice the tensions.
func TestTensionsScaleWithMass(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := drawFour(t)
		big := m
		big.Bodies = []Body{m.Bodies[0]}
		big.Bodies[0].MassKg *= 2
		big.Lines = append([]Line(nil), m.Lines...)
		for i := range big.Lines {
			big.Lines[i].StiffnessN *= 2
		}
		alike(t, m, big, func(v r3.Vec) r3.Vec { return v }, 2)
	})
}

func TestMirroredLoadsGiveMirroredAnswers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := drawFour(t)
		flip := func(v r3.Vec) r3.Vec { return vec(-v.X, v.Y, v.Z) }
		alike(t, m, moved(m, flip), flip, 1)
	})
}

// A plan drawn with other axes is the same lift.
func TestTurnedAxesGiveTheSameAnswer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := drawFour(t)
		a := TurnBy(rapid.Float64Range(-3, 3).Draw(t, "turn"), vec(0, 0, 1))
		alike(t, m, moved(m, a.World), a.World, 1)
	})
}

func moved(m Model, f func(r3.Vec) r3.Vec) Model {
	out := Model{Bodies: []Body{m.Bodies[0]}, Lines: append([]Line(nil), m.Lines...)}
	out.Bodies[0].CenterOfGravity = f(m.Bodies[0].CenterOfGravity)
	for i := range out.Lines {
		out.Lines[i].To.At = f(m.Lines[i].To.At)
	}
	return out
}

func alike(t *rapid.T, a, b Model, f func(r3.Vec) r3.Vec, times float64) {
	o := Options{MaxTiltDeg: 60}
	ra, errA := Solve(a, o)
	rb, errB := Solve(b, o)
	if errA != nil || errB != nil {
		t.Fatal(errA, errB)
	}
	if (ra.Balance != nil && ra.Balance.Rocks) || (rb.Balance != nil && rb.Balance.Rocks) {
		t.Skip("where a load stops that nothing rights is chance")
	}
	if ra.Verdict != rb.Verdict {
		t.Fatalf("%q %+v, but %q %+v", ra.Verdict, ra.Why, rb.Verdict, rb.Why)
	}
	if ra.Balance == nil || ra.Balance.Rests > 1 || ra.Balance.RightingM < 1e-3 {
		t.Skip("no figures, or more than one place to rest in")
	}
	weight := a.Bodies[0].MassKg * gravity
	for i, l := range ra.Balance.Lines {
		k := rb.Balance.Lines[i]
		near(t, "tension", k.TensionN/times/weight, l.TensionN/weight, 1e-5)
		near(t, "pull in body axes", r3.Norm(r3.Sub(k.ToPull, f(l.ToPull))), 0, 1e-5)
	}
	near(t, "tilt", rb.Balance.Bodies[0].TiltDeg, ra.Balance.Bodies[0].TiltDeg, 1e-3)
	near(t, "hook offset", r3.Norm(r3.Sub(rb.Balance.Bodies[0].HookOffset, f(ra.Balance.Bodies[0].HookOffset))), 0, 1e-5)
}
