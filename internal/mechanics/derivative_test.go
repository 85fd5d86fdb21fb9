package mechanics

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

// spreader hangs a load by two (or four) slings from the ends of a bar, itself
// hung by two slings from the hook at (0, 0, 10).
func spreader(barM, bridleM, dropM float64, barKg, loadKg float64, points []r3.Vec, ea float64) Model {
	m := Model{Bodies: []Body{{Name: "bar", MassKg: barKg}, {Name: "load", MassKg: loadKg}}}
	ends := []r3.Vec{vec(-barM/2, 0, 0), vec(barM/2, 0, 0)}
	for _, e := range ends {
		m.Lines = append(m.Lines, Line{From: Hook(vec(0, 0, 10)), To: Anchor{0, e},
			LengthM: math.Hypot(bridleM, barM/2), StiffnessN: ea})
	}
	top := points[0].Z
	for _, p := range points {
		e := ends[0]
		if p.X > 0 {
			e = ends[1]
		}
		l := r3.Norm(r3.Sub(r3.Add(e, vec(0, 0, dropM)), r3.Sub(p, vec(0, 0, top))))
		m.Lines = append(m.Lines, Line{From: Anchor{0, e}, To: Anchor{1, p}, LengthM: l, StiffnessN: ea})
	}
	return m
}

// energyOf is written apart from derive: gravity plus stretch, at the pose
// reached from st by the freedoms x.
func energyOf(s *system, st []pose, x []float64) float64 {
	moved := make([]pose, len(st))
	e := 0.0
	for b := range st {
		d := x[s.masses[b].o:]
		moved[b].at = r3.Add(st[b].at, vec(d[0], d[1], d[2]))
		moved[b].q = st[b].q
		if !s.masses[b].point {
			moved[b].q = then(st[b].q, r3.Scale(1/s.masses[b].arm, vec(d[3], d[4], d[5])))
		}
		e += s.masses[b].weight * moved[b].at.Z
	}
	for i := range s.strands {
		l := &s.strands[i]
		d := -l.length
		for _, r := range l.runs {
			_, from := r.from.arms(moved)
			_, to := r.to.arms(moved)
			d += r3.Norm(r3.Sub(to, from))
		}
		if d > 0 {
			e += l.stiffness / l.length / 2 * d * d
		}
	}
	return e
}

// Gradient and Hessian against central differences of the energy, at random
// poses of one and of two bodies, of rings and of ropes that run, slack lines among
// them.
func TestDerivativesByFiniteDifferences(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	one := fitted(1000, rectangle(4, 3, 0.7), 4, 1e6)
	two := spreader(4, 2, 3, 200, 1000, rectangle(3, 2, 0.5), 1e6)
	two.Bodies[1].CenterOfGravity = vec(0.2, 0.1, 0.3)
	running := 0
	for _, m := range []Model{one, two, ringAndSheave(), basket(0.2, 0.05, false)} {
		s := newSystem(m, Options{}.withDefaults())
		for range 10 {
			st := s.start()
			for b := range st {
				w := vec(rng.NormFloat64(), rng.NormFloat64(), rng.NormFloat64())
				st[b].q = then(st[b].q, r3.Scale(0.3, w))
				st[b].at.Z -= 0.05 * rng.Float64()
			}
			s.derive(st, s.grad, s.hess, false)
			for i := range s.strands {
				if l := &s.strands[i]; len(l.runs) > 1 && s.stretch[i] > 0 {
					running++
				}
			}
			checkDerivatives(t, s, st)
		}
	}
	if running < 10 {
		t.Errorf("a taut rope of more than one run only %d times", running)
	}
}

func checkDerivatives(t *testing.T, s *system, st []pose) {
	t.Helper()
	const h = 2e-5
	x := make([]float64, s.n)
	at := func(i, j int, hi, hj float64) float64 {
		clear(x)
		x[i] += hi
		x[j] += hj
		return energyOf(s, st, x)
	}
	scale := 1.0
	for _, v := range s.hess {
		scale = math.Max(scale, math.Abs(v))
	}
	for i := range s.n {
		g := (at(i, i, h/2, h/2) - at(i, i, -h/2, -h/2)) / (2 * h)
		near(t, "gradient", s.grad[i], g, 1e-6*scale)
		for j := range s.n {
			c := (at(i, j, h, h) - at(i, j, h, -h) - at(i, j, -h, h) + at(i, j, -h, -h)) / (4 * h * h)
			if i == j {
				c = (at(i, i, h, 0) - 2*at(i, i, 0, 0) + at(i, i, -h, 0)) / (h * h)
			}
			near(t, "second derivative", s.hess[i*s.n+j], c, 1e-4*scale)
		}
	}
}
