package mechanics

import "gonum.org/v1/gonum/spatial/r3"

// Freedoms of a body are three displacements in meters, then, unless it is a
// point, three rotations times the body's arm, so that all are lengths and all
// derivatives forces.

// derive fills grad, and hess unless nil, with the first and second derivatives
// of gravity plus stretch energy at st (N and N/m). With locked set the
// attitudes are held: their rows become those of the identity.
func (s *system) derive(st []pose, grad, hess []float64, locked bool) {
	clear(grad)
	clear(hess)
	for b := range s.masses {
		grad[s.masses[b].o+2] = s.masses[b].weight
	}
	for i := range s.strands {
		l := &s.strands[i]
		s.stretch[i] = s.measure(st, l) - l.length
		if s.stretch[i] > 0 {
			s.addStrand(st, l, l.rate*s.stretch[i], l.rate, grad, hess)
		}
	}
	if locked {
		s.lock(grad, hess)
	}
}

// measure is the reach of l, and leaves its runs in spans.
func (s *system) measure(st []pose, l *strand) float64 {
	sum := 0.0
	for j := range l.runs {
		s.spans[j] = l.runs[j].span(st)
		sum += r3.Norm(s.spans[j])
	}
	return sum
}

// addStrand adds a strand of tension t and rate k, just measured, to the
// derivatives. Its energy k/2 (sum of reaches - length)^2 has as first derivative
// t times that of the sum, and as second k times the dyad of the latter plus t
// times the second derivative of the sum.
func (s *system) addStrand(st []pose, l *strand, t, k float64, grad, hess []float64) {
	if len(l.runs) == 1 {
		s.addRun(st, &l.runs[0], s.spans[0], t, k, grad, hess)
		return
	}
	for j := range l.runs {
		s.addRun(st, &l.runs[j], s.spans[j], t, 0, grad, hess)
	}
	if hess != nil {
		addDyad(hess, s.n, k, s.pullOn(st, l, false))
	}
}

// addRun adds a run with the span d, of unit direction n, tension t and rate k. Its
// energy depends on the vector between its ends alone: first derivative t n,
// second k n n' + t/reach (1 - n n').
func (s *system) addRun(st []pose, r *run, d r3.Vec, t, k float64, grad, hess []float64) {
	reach := r3.Norm(d)
	if reach < touching {
		return
	}
	n := r3.Scale(1/reach, d)
	pull := r3.Scale(t, n)
	s.addPull(st, r.from, r3.Scale(-1, pull), grad, hess)
	s.addPull(st, r.to, pull, grad, hess)
	if hess == nil {
		return
	}
	m := dyad(k-t/reach, n, n)
	m[0].X += t / reach
	m[1].Y += t / reach
	m[2].Z += t / reach
	s.addStiffness(st, r.from, r.from, 1, m, hess)
	s.addStiffness(st, r.to, r.to, 1, m, hess)
	s.addStiffness(st, r.from, r.to, -1, m, hess)
	s.addStiffness(st, r.to, r.from, -1, m, hess)
}

// addPull adds f, the derivative of the energy with the place of the end e, and
// the second derivative that comes from the end moving on a circle when its
// body turns: 1/2 (f r' + r f') - (f.r) 1.
func (s *system) addPull(st []pose, e end, f r3.Vec, grad, hess []float64) {
	if e.body == World {
		return
	}
	b := &s.masses[e.body]
	add3(grad[b.o:], f)
	if b.point {
		return
	}
	r, _ := e.arms(st)
	o, inv := b.o+3, 1/b.arm
	add3(grad[o:], r3.Scale(inv, r3.Cross(r, f)))
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
		add3(hess[(o+i)*s.n+o:], r3.Add(m[i], w[i]))
	}
}

// addStiffness adds sign * Ja' m Jb, where J = [1, -[r]x/arm] carries the
// freedoms of a body to the place of a run's end on it.
func (s *system) addStiffness(st []pose, a, b end, sign float64, m [3]r3.Vec, hess []float64) {
	if a.body == World || b.body == World {
		return
	}
	ma, mb := &s.masses[a.body], &s.masses[b.body]
	rows, count := [6]r3.Vec{m[0], m[1], m[2]}, 3
	if !ma.point {
		r, _ := a.arms(st)
		c := [3]r3.Vec{r3.Cross(r, m[0]), r3.Cross(r, m[1]), r3.Cross(r, m[2])}
		inv := 1 / ma.arm
		rows[3] = r3.Vec{X: inv * c[0].X, Y: inv * c[1].X, Z: inv * c[2].X}
		rows[4] = r3.Vec{X: inv * c[0].Y, Y: inv * c[1].Y, Z: inv * c[2].Y}
		rows[5] = r3.Vec{X: inv * c[0].Z, Y: inv * c[1].Z, Z: inv * c[2].Z}
		count = 6
	}
	rb, _ := b.arms(st)
	inv := sign / mb.arm
	for i, row := range rows[:count] {
		o := (ma.o+i)*s.n + mb.o
		add3(hess[o:], r3.Scale(sign, row))
		if !mb.point {
			add3(hess[o+3:], r3.Scale(inv, r3.Cross(rb, row)))
		}
	}
}

// lock takes the rotations out of the derivatives.
func (s *system) lock(grad, hess []float64) {
	for b := range s.masses {
		if s.masses[b].point {
			continue
		}
		o := s.masses[b].o + 3
		for i := o; i < o+3; i++ {
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
		sum += s.masses[b].weight * step[s.masses[b].o+2]
	}
	for i := range s.strands {
		l := &s.strands[i]
		was, is := max(s.stretch[i], 0), max(l.reach(s.trial)-l.length, 0)
		sum += 0.5 * l.rate * (is - was) * (is + was)
	}
	return sum
}
