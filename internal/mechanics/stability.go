package mechanics

import "math"

// curve is the least stiffness of the bodies against turning.
type curve struct {
	// rightingM is the least moment per radian over the total weight, meters.
	rightingM float64
	// least is what rightingM must exceed to count as more than none.
	least float64
	// turns has the rotation vector of that least resisted turn, three a body
	// that can turn, of unit length over all.
	turns []float64
	// loose has the turns that nothing more than rounding resists.
	loose [][]float64
	// mayRise has for each body how far its center of gravity may rise, meters.
	mayRise []float64
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
	r := s.turns
	reduced := make([]float64, 2*r*r)
	reduced, v := reduced[:r*r], reduced[r*r:]
	if !s.eliminateDisplacements(reduced) {
		return curve{}
	}
	if r == 0 {
		return curve{known: true, rightingM: math.Inf(1), mayRise: s.mayRise(st, nil, nil, 0)}
	}
	trace := 0.0
	for i := range r {
		trace += math.Abs(reduced[i*r+i])
	}
	s.holdSpins(st, reduced, append(s.idleSpins(tension), s.spins...))
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
	c.mayRise = s.mayRise(st, reduced, v, c.least*s.weight)
	return c
}

// stiffness fills hess from given tensions instead of stretches: those of lines
// cut to fit. Lines that count as slack do not resist: one that is only just
// taut resists one way and not the other.
func (s *system) stiffness(st []pose, tension []float64) {
	clear(s.grad)
	clear(s.hess)
	for i := range s.strands {
		l := &s.strands[i]
		if tension[i] > s.idle && s.measure(st, l) > touching {
			s.addStrand(st, l, tension[i], min(l.stiffness, stiffEnough*s.weight)/l.length, s.grad, s.hess)
		}
	}
}

// eliminateDisplacements writes the stiffness against turning, N m per radian,
// with the displacements free to follow: Hrr - Hrt Htt^-1 Htr.
func (s *system) eliminateDisplacements(out []float64) bool {
	shifts, turns := s.shifts, s.rotations
	t, r := len(shifts), len(turns)
	tt := s.factor[:t*t]
	scale := 0.0
	for i, o := range shifts {
		for j, p := range shifts {
			tt[i*t+j] = s.hess[o*s.n+p]
		}
		scale = math.Max(scale, tt[i*t+i])
	}
	if !cholesky(tt, t, 1e-13*scale) {
		return false
	}
	x := make([]float64, t)
	for j, p := range turns {
		for i, o := range shifts {
			x[i] = s.hess[o*s.n+p]
		}
		solveCholesky(tt, t, x)
		for i, q := range turns {
			v := s.hess[q*s.n+p]
			for k, o := range shifts {
				v -= s.hess[q*s.n+o] * x[k]
			}
			out[i*r+j] = v
		}
	}
	for b := range s.masses {
		s.perRadian(out, b)
	}
	for i := range r {
		for j := range i {
			m := (out[i*r+j] + out[j*r+i]) / 2
			out[i*r+j], out[j*r+i] = m, m
		}
	}
	return true
}

// perRadian turns rows and columns of a body's rotations from meters to radians.
func (s *system) perRadian(a []float64, b int) {
	if s.masses[b].point {
		return
	}
	for i := s.masses[b].turn; i < s.masses[b].turn+3; i++ {
		for j := range s.turns {
			a[i*s.turns+j] *= s.masses[b].arm
			a[j*s.turns+i] *= s.masses[b].arm
		}
	}
}

// holdSpins makes free spins stiff, so that they are not found.
func (s *system) holdSpins(st []pose, a []float64, spins []spin) {
	r := s.turns
	var basis [][]float64
	for i := range spins {
		v := make([]float64, r)
		s.fill(st, &spins[i], v)
		if norm(v) == 0 {
			continue // nothing but points
		}
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
