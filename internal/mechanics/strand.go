package mechanics

import (
	"math"

	"gonum.org/v1/gonum/spatial/r3"
)

// end of a run, seen from the center of gravity of its body, or from the
// reference point of the world.
type end struct {
	body int
	at   r3.Vec
}

// run is a straight part of a rope.
type run struct{ from, to end }

// strand is what stretches as one, at one tension: a line with all its runs, or
// one run of a line that grips.
type strand struct {
	line      int // number in the model
	runs      []run
	length    float64
	stiffness float64 // EA
	rate      float64 // EA over length, with the softening in force
}

// touching is the reach, in meters, below which a run has no direction.
const touching = 1e-9

// arms gives the world vector from the body's center of gravity to the run's
// end, and the end's place in the world.
func (e end) arms(st []pose) (arm, place r3.Vec) {
	if e.body == World {
		return r3.Vec{}, e.at
	}
	arm = turn(st[e.body].q, e.at)
	return arm, r3.Add(st[e.body].at, arm)
}

// span is the way from a run's From to its To in the world.
func (r *run) span(st []pose) r3.Vec {
	_, a := r.from.arms(st)
	_, b := r.to.arms(st)
	return r3.Sub(b, a)
}

// reach is the way along all runs, end to end.
func (l *strand) reach(st []pose) float64 {
	sum := 0.0
	for j := range l.runs {
		sum += r3.Norm(l.runs[j].span(st))
	}
	return sum
}

// across gives the body at the other end of a run from body b.
func (r *run) across(b int) (other int, joined bool) {
	switch b {
	case r.from.body:
		return r.to.body, true
	case r.to.body:
		return r.from.body, true
	}
	return 0, false
}

// each calls f with every end of every run.
func (s *system) each(f func(e end)) {
	for i := range s.strands {
		for _, r := range s.strands[i].runs {
			f(r.from)
			f(r.to)
		}
	}
}

// grip lets friction hold the ropes that grip: each of their runs becomes a
// strand with the share of the length that lies along it at held, where the whole
// pulls alike. It reports whether any does.
func (s *system) grip(held []pose) bool {
	var out []strand
	any := false
	for i := range s.sliding {
		l := s.sliding[i]
		if !s.model.Lines[l.line].Grips || len(l.runs) == 1 {
			out = append(out, l)
			continue
		}
		any = true
		share := l.length / l.reach(held)
		for j := range l.runs {
			part := l
			part.runs = l.runs[j : j+1]
			part.length = max(share*r3.Norm(l.runs[j].span(held)), touching)
			out = append(out, part)
		}
	}
	if !any {
		return false
	}
	s.strands = out
	s.soften(math.Inf(1))
	s.stretch = make([]float64, len(out))
	s.trialReach = make([]float64, len(out))
	s.caughtBy = make([]bool, len(out))
	return true
}
