package mechanics

import "gonum.org/v1/gonum/spatial/r3"

// Freedoms of body b stand at 6b: three displacements in meters, then three
// rotations times the body's arm, so that all are lengths and all derivatives
// forces.

// derive fills grad, and hess unless nil, with the first and second derivatives
// of gravity plus stretch energy at st (N and N/m). With locked set the
// attitudes are held: their rows become those of the identity.
func (s *system) derive(st []pose, grad, hess []float64, locked bool) {
	clear(grad)
	clear(hess)
	for b := range s.masses {
		grad[6*b+2] = s.masses[b].weight
	}
	for i := range s.strands {
		l := &s.strands[i]
		d := l.span(st)
		reach := r3.Norm(d)
		s.stretch[i] = reach - l.length
		if s.stretch[i] <= 0 {
			continue
		}
		s.addLine(st, l, r3.Scale(1/reach, d), l.rate*s.stretch[i], l.rate, reach, grad, hess)
	}
	if locked {
		s.lock(grad, hess)
	}
}

// addLine adds a line of unit direction n, tension t, rate k and reach to the
// derivatives. Its energy depends on the vector between its ends alone: first
// derivative t n, second k n n' + t/reach (1 - n n').
func (s *system) addLine(st []pose, l *strand, n r3.Vec, t, k, reach float64, grad, hess []float64) {
	pull := r3.Scale(t, n)
	s.addPull(st, l.from, r3.Scale(-1, pull), grad, hess)
	s.addPull(st, l.to, pull, grad, hess)
	if hess == nil {
		return
	}
	m := dyad(k-t/reach, n, n)
	m[0].X += t / reach
	m[1].Y += t / reach
	m[2].Z += t / reach
	s.addStiffness(st, l.from, l.from, 1, m, hess)
	s.addStiffness(st, l.to, l.to, 1, m, hess)
	s.addStiffness(st, l.from, l.to, -1, m, hess)
	s.addStiffness(st, l.to, l.from, -1, m, hess)
}

// addPull adds f, the derivative of the energy with the place of the end e, and
// the second derivative that comes from the end moving on a circle when its
// body turns: 1/2 (f r' + r f') - (f.r) 1.
func (s *system) addPull(st []pose, e end, f r3.Vec, grad, hess []float64) {
	if e.body == World {
		return
	}
	r, _ := e.arms(st)
	o, inv := 6*e.body, 1/s.masses[e.body].arm
	add3(grad[o:], f)
	add3(grad[o+3:], r3.Scale(inv, r3.Cross(r, f)))
	if hess == nil {
		return
	}
	m := dyad(0.5*inv*inv, f, r)
	w := dyad(0.5*inv*inv, r, f)
	fr := r3.Dot(f, r) * inv * inv
	m[0].X -= fr
	m[1].Y -= fr
	m[2].Z -= fr
	for i := range m {
		add3(hess[(o+3+i)*s.n+o+3:], r3.Add(m[i], w[i]))
	}
}

// addStiffness adds sign * Ja' m Jb, where J = [1, -[r]x/arm] carries the six
// freedoms of a body to the place of a line's end on it.
func (s *system) addStiffness(st []pose, a, b end, sign float64, m [3]r3.Vec, hess []float64) {
	if a.body == World || b.body == World {
		return
	}
	ra, _ := a.arms(st)
	rb, _ := b.arms(st)
	c := [3]r3.Vec{r3.Cross(ra, m[0]), r3.Cross(ra, m[1]), r3.Cross(ra, m[2])}
	inv := 1 / s.masses[a.body].arm
	rows := [6]r3.Vec{m[0], m[1], m[2],
		{X: inv * c[0].X, Y: inv * c[1].X, Z: inv * c[2].X},
		{X: inv * c[0].Y, Y: inv * c[1].Y, Z: inv * c[2].Y},
		{X: inv * c[0].Z, Y: inv * c[1].Z, Z: inv * c[2].Z},
	}
	inv = sign / s.masses[b.body].arm
	for i, row := range rows {
		o := (6*a.body+i)*s.n + 6*b.body
		add3(hess[o:], r3.Scale(sign, row))
		add3(hess[o+3:], r3.Scale(inv, r3.Cross(rb, row)))
	}
}

// lock takes the rotations out of the derivatives.
func (s *system) lock(grad, hess []float64) {
	for b := range s.masses {
		for i := 6*b + 3; i < 6*b+6; i++ {
			grad[i] = 0
			if hess == nil {
				continue
			}
			for j := range s.n {
				hess[i*s.n+j], hess[j*s.n+i] = 0, 0
			}
			hess[i*s.n+i] = 1
		}
	}
}

// dyad is f a b', by rows.
func dyad(f float64, a, b r3.Vec) [3]r3.Vec {
	return [3]r3.Vec{r3.Scale(f*a.X, b), r3.Scale(f*a.Y, b), r3.Scale(f*a.Z, b)}
}

func add3(to []float64, v r3.Vec) {
	_ = to[2]
	to[0] += v.X
	to[1] += v.Y
	to[2] += v.Z
}

// energyChange is the energy at the trial minus that at the last call of
// derive, taken line by line as a difference so that little is lost to
// rounding. step is what led from one to the other.
func (s *system) energyChange(step []float64) float64 {
	sum := 0.0
	for b := range s.masses {
		sum += s.masses[b].weight * step[6*b+2]
	}
	for i := range s.strands {
		l := &s.strands[i]
		was, is := max(s.stretch[i], 0), max(r3.Norm(l.span(s.trial))-l.length, 0)
		sum += 0.5 * l.rate * (is - was) * (is + was)
	}
	return sum
}
