package mechanics

import (
	"math"

	"gonum.org/v1/gonum/spatial/r3"
)

// curve is the least stiffness of the bodies against turning.
type curve struct {
	// rightingM is the least moment per radian over the total weight, meters.
	rightingM float64
	// least is what rightingM must exceed to count as more than none.
	least float64
	// turns has the rotation vector of that least resisted turn, three a body,
	// of unit length over all.
	turns []float64
	// loose has the turns that nothing more than rounding resists.
	loose [][]float64
	// known is false where the stiffness against displacement itself failed.
	known bool
}

func (c curve) steady() bool { return c.known && c.rightingM > c.least }

// stiffEnough is EA over weight beyond which lines are as good as inextensible.
// Stiffer ones are taken as this stiff when steadiness is judged: on the safe
// side by a millionth, and rounding stays small beside what decides.
const stiffEnough = 1e6

// steadiness judges the steadiness of st with the tensions given: second
// derivatives of the energy in the rotations, displacements following along
// (Schur complement), free spins taken out.
func (s *system) steadiness(st []pose, tension []float64) curve {
	s.stiffness(st, tension)
	r := len(s.masses) * 3
	reduced := make([]float64, r*r)
	if !s.eliminateDisplacements(reduced) {
		return curve{}
	}
	trace := 0.0
	for i := range r {
		trace += math.Abs(reduced[i*r+i])
	}
	s.holdSpins(st, reduced)
	v := make([]float64, r*r)
	eigen(reduced, v, r)
	low := 0
	for i := range r {
		if reduced[i*r+i] < reduced[low*r+low] {
			low = i
		}
	}
	c := curve{known: true}
	c.rightingM = reduced[low*r+low] / s.weight
	c.least = level*s.arm + 64*0x1p-52*trace/s.weight
	c.turns = column(v, r, low)
	for i := range r {
		if reduced[i*r+i] <= c.least*s.weight {
			c.loose = append(c.loose, column(v, r, i))
		}
	}
	return c
}

// stiffness fills hess from given tensions instead of stretches: those of lines
// cut to fit. Lines that count as slack do not resist: one that is only just
// taut resists one way and not the other.
func (s *system) stiffness(st []pose, tension []float64) {
	clear(s.grad)
	clear(s.hess)
	limit := math.Min(1, stiffEnough*s.weight/s.stiffest)
	for i := range s.strands {
		l := &s.strands[i]
		d := l.span(st)
		reach := r3.Norm(d)
		if tension[i] <= carriesNothing*s.weight || reach == 0 {
			continue
		}
		s.addLine(st, l, r3.Scale(1/reach, d), tension[i], limit*l.stiffness/l.length, reach, s.grad, s.hess)
	}
}

// eliminateDisplacements writes the stiffness against turning, N m per radian,
// with the displacements free to follow: Hrr - Hrt Htt^-1 Htr.
func (s *system) eliminateDisplacements(out []float64) bool {
	r := 3 * len(s.masses)
	tt := s.factor[:r*r]
	at := func(i, j, rotI, rotJ int) float64 { // entry of hess by kind
		return s.hess[(6*(i/3)+3*rotI+i%3)*s.n+6*(j/3)+3*rotJ+j%3]
	}
	scale := 0.0
	for i := range r {
		for j := range r {
			tt[i*r+j] = at(i, j, 0, 0)
		}
		scale = math.Max(scale, tt[i*r+i])
	}
	if !cholesky(tt, r, 1e-13*scale) {
		return false
	}
	x := make([]float64, r)
	for j := range r {
		for i := range r {
			x[i] = at(i, j, 0, 1)
		}
		solveCholesky(tt, r, x)
		for i := range r {
			v := at(i, j, 1, 1)
			for k := range r {
				v -= at(i, k, 1, 0) * x[k]
			}
			out[i*r+j] = v * s.masses[i/3].arm * s.masses[j/3].arm
		}
	}
	for i := range r {
		for j := range i {
			m := (out[i*r+j] + out[j*r+i]) / 2
			out[i*r+j], out[j*r+i] = m, m
		}
	}
	return true
}

// holdSpins makes the free spins stiff, so that they are not found.
func (s *system) holdSpins(st []pose, a []float64) {
	r := 3 * len(s.masses)
	var basis [][]float64
	for i := range s.spins {
		v := make([]float64, r)
		s.spins[i].fill(st, v)
		scaleTo(v, 1)
		for _, u := range basis {
			f := dot(u, v)
			for k := range v {
				v[k] -= f * u[k]
			}
		}
		if norm(v) < 1e-6 {
			continue // one spin under two names
		}
		scaleTo(v, 1)
		basis = append(basis, v)
	}
	for _, u := range basis {
		project(a, u, r, s.weight*s.arm*float64(r))
	}
}

// project takes direction u out of the symmetric a and puts stiff in its place.
func project(a, u []float64, n int, stiff float64) {
	w := make([]float64, n)
	for i := range n {
		w[i] = dot(a[i*n:(i+1)*n], u)
	}
	uau := dot(u, w)
	for i := range n {
		for j := range n {
			a[i*n+j] += (uau+stiff)*u[i]*u[j] - w[i]*u[j] - u[i]*w[j]
		}
	}
}

func scaleTo(v []float64, length float64) {
	f := length / norm(v)
	for i := range v {
		v[i] *= f
	}
}

func column(v []float64, n, j int) []float64 {
	c := make([]float64, n)
	for i := range c {
		c[i] = v[i*n+j]
	}
	return c
}
