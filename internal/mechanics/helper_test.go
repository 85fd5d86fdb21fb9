package mechanics

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

const gravity = 9.80665

func vec(x, y, z float64) r3.Vec { return r3.Vec{X: x, Y: y, Z: z} }

// hung is one body with its center of gravity at the origin of its axes, held
// from a hook at (0, 0, 10) by a line to each point.
func hung(massKg float64, points []r3.Vec, lengths []float64, ea float64) Model {
	m := Model{Bodies: []Body{{Name: "load", MassKg: massKg}}}
	for i, p := range points {
		m.Lines = append(m.Lines, Line{
			Name: string(rune('A' + i)), From: Hook(vec(0, 0, 10)), To: Anchor{Body: 0, At: p},
			LengthM: lengths[i], StiffnessN: ea,
		})
	}
	return m
}

// fitted is the same with lines that reach from a point at the height above the
// center of gravity, straight above it.
func fitted(massKg float64, points []r3.Vec, height, ea float64) Model {
	lengths := make([]float64, len(points))
	for i, p := range points {
		lengths[i] = r3.Norm(r3.Sub(vec(0, 0, height), p))
	}
	return hung(massKg, points, lengths, ea)
}

func solve(t testing.TB, m Model) Result {
	t.Helper()
	r, err := Solve(m, Options{})
	if err != nil {
		t.Fatal(err)
	}
	return r
}

type fataler interface {
	Helper()
	Fatalf(format string, args ...any)
}

// steady solves a model that must hang.
func steady(t fataler, m Model) *Balance {
	t.Helper()
	r, err := Solve(m, Options{})
	if err != nil {
		t.Fatalf("%v", err)
	}
	if r.Verdict != Steady {
		t.Fatalf("verdict %q: %+v", r.Verdict, r.Why)
	}
	return r.Balance
}

func near(t fataler, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Fatalf("%s: got %.9g, want %.9g within %.2g", what, got, want, tol)
	}
}

// rectangle lists the corners (dx, dy) around the center, at height z.
func rectangle(dx, dy, z float64) []r3.Vec {
	return []r3.Vec{vec(-dx/2, -dy/2, z), vec(dx/2, -dy/2, z), vec(dx/2, dy/2, z), vec(-dx/2, dy/2, z)}
}

func shifted(points []r3.Vec, by r3.Vec) []r3.Vec {
	out := make([]r3.Vec, len(points))
	for i, p := range points {
		out[i] = r3.Add(p, by)
	}
	return out
}
