package mechanics

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

// Statics, exact: a spreader under two top legs at b from horizontal is pressed
// together by W/(2 tan b); with all slings on its axis only its own weight, of a
// hundred thousandth of W, bends it: by weight times length over 4.
func TestSpreaderIsPressedAndNotBent(t *testing.T) {
	const w = 1000 * gravity
	for _, deg := range []float64{30, 45, 60, 75} {
		b := deg * math.Pi / 180
		m := spreader(4, 2*math.Tan(b), 3, 0.01, 1000, []r3.Vec{vec(-2, 0, 0.5), vec(2, 0, 0.5)}, 1e10)
		s := SectionForces(m, Options{}, steady(t, m), 0, r3.Vec{}, vec(1, 0, 0))
		near(t, "compression over W", s.CompressionN/w, 1/(2*math.Tan(b)), 1e-4)
		near(t, "tension", s.TensionN/w, 0, 1e-6)
		near(t, "bending", s.BendingNm/w, 1e-5*4/4, 1e-7)
		near(t, "shear", s.ShearN/w, 0, 1e-5)
	}
}

// Statics: with the points of the top legs at a above the axis, their thrust N bends
// the bar all along by N a. Plumb lower slings have no thrust, so how far below the
// axis they are fixed does not matter.
func TestSpreaderWithLugsOffItsAxis(t *testing.T) {
	const w, a = 1000 * gravity, 0.12
	m := spreader(4, 2, 3, 0.01, 1000, []r3.Vec{vec(-2, 0, 0.5), vec(2, 0, 0.5)}, 1e10)
	for i := range 2 {
		m.Lines[i].To.At.Z = a
	}
	for i := 2; i < 4; i++ {
		m.Lines[i].From.At.Z = -0.2
	}
	s := SectionForces(m, Options{}, steady(t, m), 0, r3.Vec{}, vec(2, 0, 0))
	near(t, "compression", s.CompressionN/w, 0.5, 1e-4)
	near(t, "bending", s.BendingNm/w, 0.5*a, 1e-4)
}

// Beam tables (simply supported beam, load in the middle; common to handbooks): a
// lifting beam of length L hung in the middle with W/2 under each end bends by
// W L/4 in the middle and shears by W/2.
func TestLiftingBeamBends(t *testing.T) {
	const l, w, own = 5.0, 2000 * gravity, 300 * gravity
	m := Model{Bodies: []Body{{Name: "beam", MassKg: 300}, {Name: "load", MassKg: 2000}}}
	m.Lines = []Line{
		rope("top", 2, 1e10, Hook(vec(0, 0, 10)), Anchor{0, vec(0, 0, 0.3)}),
		rope("left", 2, 1e10, Anchor{0, vec(-l/2, 0, -0.2)}, Anchor{1, vec(-l/2, 0, 0.5)}),
		rope("right", 2, 1e10, Anchor{0, vec(l/2, 0, -0.2)}, Anchor{1, vec(l/2, 0, 0.5)}),
	}
	s := SectionForces(m, Options{}, steady(t, m), 0, vec(-l/2, 0, 0), vec(1, 0, 0))
	near(t, "bending over W L", s.BendingNm/(w*l), 0.25, 1e-6)
	near(t, "where", s.BendingAtM, l/2, 1e-9)
	near(t, "shear", s.ShearN/w, 0.5, 1e-6)
	near(t, "compression", s.CompressionN, 0, 1e-3*w)
	// The axis' sense and the point it is counted from change no force.
	back := SectionForces(m, Options{}, steady(t, m), 0, vec(l/2, 0, 0), vec(-1, 0, 0))
	near(t, "bending, from the other end", back.BendingNm, s.BendingNm, 1e-3)
	// Hung at both ends instead, its own weight in the middle: own L/4.
	m.Lines[0] = rope("top left", 2, 1e10, Hook(vec(-l/2, 0, 10)), Anchor{0, vec(-l/2, 0, 0.3)})
	m.Lines = append(m.Lines, rope("top right", 2, 1e10, Hook(vec(l/2, 0, 10)), Anchor{0, vec(l/2, 0, 0.3)}))
	s = SectionForces(m, Options{}, steady(t, m), 0, vec(-l/2, 0, 0), vec(1, 0, 0))
	near(t, "bending by own weight", s.BendingNm/(own*l), 0.25, 1e-5)
	near(t, "shear by own weight", s.ShearN/own, 0.5, 1e-5)
}

// A bar pulled apart: two slings that spread outward below it, from level tops.
func TestBarPulledApart(t *testing.T) {
	m := Model{Bodies: []Body{{Name: "bar", MassKg: 1}, {Name: "load", MassKg: 1000}}}
	m.Lines = []Line{
		rope("top left", 2, 1e10, Hook(vec(-1, 0, 10)), Anchor{0, vec(-1, 0, 0)}),
		rope("top right", 2, 1e10, Hook(vec(1, 0, 10)), Anchor{0, vec(1, 0, 0)}),
		rope("left", math.Sqrt2, 1e10, Anchor{0, vec(-1, 0, 0)}, Anchor{1, vec(-2, 0, 0.5)}),
		rope("right", math.Sqrt2, 1e10, Anchor{0, vec(1, 0, 0)}, Anchor{1, vec(2, 0, 0.5)}),
	}
	s := SectionForces(m, Options{}, steady(t, m), 0, r3.Vec{}, vec(1, 0, 0))
	near(t, "tension over W", s.TensionN/(1000*gravity), 0.5, 1e-3)
	near(t, "compression over W", s.CompressionN/(1000*gravity), 0, 1e-3)
}

func TestSectionOfNoAxisIsNeverFine(t *testing.T) {
	m := fitted(1000, rectangle(4, 3, 0.5), 4, 1e9)
	s := SectionForces(m, Options{}, steady(t, m), 0, r3.Vec{}, r3.Vec{})
	for _, v := range []float64{s.CompressionN, s.TensionN, s.ShearN, s.BendingNm} {
		if !math.IsInf(v, 1) {
			t.Errorf("%+v", s)
		}
	}
}
