package mechanics

import "gonum.org/v1/gonum/spatial/r3"

// newton fills step with a damped Newton step. Second derivatives know nothing
// of slack lines, which would catch a long step like a wall: so those that the
// step would draw taut are taken as springs already, and the step is taken
// anew, until it agrees with itself on which lines those are. False: the second
// derivatives and damping have no minimum.
func (s *system) newton(st []pose, damping float64, locked bool) bool {
	clear(s.caughtBy)
	for range 4 {
		if !s.newtonOnce(st, damping, locked) {
			return false
		}
		s.shorten()
		if !s.catch(st, locked) {
			break
		}
	}
	return true
}

func (s *system) newtonOnce(st []pose, damping float64, locked bool) bool {
	copy(s.factor, s.hess)
	for i, g := range s.grad {
		s.factor[i*s.n+i] += damping
		s.step[i] = -g
	}
	for i, caught := range s.caughtBy {
		if caught {
			l := &s.strands[i]
			u := s.pullOn(st, l, locked)
			addDyad(s.factor, s.n, l.rate, u)
			for k := range s.step {
				s.step[k] -= l.rate * s.stretch[i] * u[k]
			}
		}
	}
	if !locked { // held attitudes spin nowhere
		s.restrain(st)
	}
	if !cholesky(s.factor, s.n, 0) {
		return false
	}
	solveCholesky(s.factor, s.n, s.step)
	return true
}

// bend adds to the step what follows from lines turning on the way: a point on a
// short stiff link moves on an arc, and a straight step along it would stretch the
// link. What the step would stretch lines beyond what was foreseen is taken off by
// the same second derivatives (geodesic acceleration; Transtrum and Sethna 2012,
// from memory).
func (s *system) bend(st []pose, locked bool) {
	s.move(st)
	more := s.trialGrad
	clear(more)
	for i := range s.strands {
		if s.stretch[i] <= 0 && !s.caughtBy[i] {
			continue
		}
		l := &s.strands[i]
		u := s.pullOn(st, l, locked)
		beyond := l.reach(s.trial) - l.length - s.stretch[i] - dot(u, s.step)
		for k := range more {
			more[k] -= l.rate * beyond * u[k]
		}
	}
	solveCholesky(s.factor, s.n, more)
	if norm(more) > 0.75*norm(s.step) {
		return
	}
	for k := range more {
		s.step[k] += more[k]
	}
}

// catch marks the slack lines that the step would draw taut, and reports whether
// that changes anything.
func (s *system) catch(st []pose, locked bool) bool {
	changed := false
	for i := range s.strands {
		if s.stretch[i] > 0 {
			continue
		}
		taut := s.stretch[i]+dot(s.pullOn(st, &s.strands[i], locked), s.step) > 0
		changed = changed || taut != s.caughtBy[i]
		s.caughtBy[i] = taut
	}
	return changed
}

// caught is the energy that the step, as far as can be foreseen, puts into lines
// that are slack now.
func (s *system) caught(st []pose) float64 {
	sum := 0.0
	for i, caught := range s.caughtBy {
		if caught {
			l := &s.strands[i]
			e := max(0, s.stretch[i]+dot(s.pullOn(st, l, false), s.step))
			sum += 0.5 * l.rate * e * e
		}
	}
	return sum
}

// pullOn is the first derivative of a line's stretch with the freedoms.
func (s *system) pullOn(st []pose, l *strand, locked bool) []float64 {
	u := s.way
	clear(u)
	for j := range l.runs {
		n := unit(l.runs[j].span(st))
		s.addPull(st, l.runs[j].from, r3.Scale(-1, n), u, nil)
		s.addPull(st, l.runs[j].to, n, u, nil)
	}
	if locked {
		s.lock(u, nil)
	}
	return u
}

// addDyad adds f u u' to the matrix a.
func addDyad(a []float64, n int, f float64, u []float64) {
	for j, v := range u {
		if v == 0 {
			continue
		}
		for k, w := range u {
			a[j*n+k] += f * v * w
		}
	}
}
