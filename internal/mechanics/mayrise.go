package mechanics

import "math"

// mayRise gives for each body how far its center of gravity may rise before
// nothing rights the load, from the eigenvalues (on the diagonal of values) and
// eigenvectors (columns of v) of the stiffness K against turning, N m per radian.
// A rise d takes W d off this body's turns about the world's horizontal axes, and
// K - W d P stays positive up to d = 1 / (W times the largest eigenvalue of
// P K^-1 P).
func (s *system) mayRise(st []pose, values, v []float64, least float64) []float64 {
	out := make([]float64, len(s.masses))
	steady := true
	for i := range s.turns {
		steady = steady && values[i*s.turns+i] > least
	}
	for b := range s.masses {
		switch {
		case s.masses[b].point:
			out[b] = math.Inf(1)
		case steady && !s.rollsOver(st, b):
			out[b] = 1 / (s.masses[b].weight * s.mostCompliant(b, values, v))
		}
	}
	return out
}

// mostCompliant is the largest eigenvalue of K^-1 over the turns of body b about
// horizontal axes.
func (s *system) mostCompliant(b int, values, v []float64) float64 {
	var xx, xy, yy float64
	n := s.turns
	o := s.masses[b].turn
	for i := range n {
		x, y, k := v[o*n+i], v[(o+1)*n+i], values[i*n+i]
		xx += x * x / k
		xy += x * y / k
		yy += y * y / k
	}
	return (xx+yy)/2 + math.Hypot((xx-yy)/2, xy)
}

// rollsOver says whether body b can roll about a line through its points and its
// center of gravity that is not plumb: the least rise then rolls it over.
func (s *system) rollsOver(st []pose, b int) bool {
	for i := range s.spins {
		if p := &s.spins[i]; p.roll && p.bodies[0] == b {
			a := turn(st[b].q, p.axis)
			return math.Hypot(a.X, a.Y) > onLine
		}
	}
	return false
}
