package mechanics

import (
	"slices"

	"gonum.org/v1/gonum/spatial/r3"
)

// SolveNear is Solve for a model that differs little from one whose rest is known:
// the same bodies, lines and anchors; other masses, centers of gravity, lengths.
// It begins at that rest and gives the same verdict and, to a millionth of the
// weight, the same tensions; where the load does not come from there to a steady
// rest with all lines taut, it solves anew from the beginning.
func SolveNear(m Model, o Options, near *Balance) (Result, error) {
	o = o.withDefaults()
	if err := check(m, o); err != nil {
		return Result{}, err
	}
	s := newSystem(m, o)
	if near.fits(m) {
		if r := s.judgeFrom(near); r.Verdict == Steady {
			return r, nil
		}
		s = newSystem(m, o)
	}
	return s.judge(), nil
}

// fits says whether the balance can be one of a model like m, with but one place
// to rest in: all lines taut.
func (b *Balance) fits(m Model) bool {
	if b == nil || b.Rests != 1 || b.Rocks || len(b.Bodies) != len(m.Bodies) || len(b.Lines) != len(m.Lines) {
		return false
	}
	for i := range m.Lines {
		if len(b.Lines[i].Runs) != m.Lines[i].runs() || b.Lines[i].Slack {
			return false
		}
	}
	return true
}

// judgeFrom is judge from a rest close by. Everything but a plainly steady load is
// left to the longer way: the zero Result.
func (s *system) judgeFrom(near *Balance) Result {
	h := hanging{held: s.posesAt(near)}
	for b := range h.held {
		h.held[b].q = s.masses[b].intended
	}
	if h.found = s.settle(h.held, true); !h.found {
		return Result{}
	}
	s.grip(h.held)
	h.intended, h.applies = s.asIntended(h.held)
	if h.applies && !h.intended.steady() {
		return Result{}
	}
	st := s.posesAt(near)
	if !s.settle(st, false) || s.overstretched(st) != nil || s.turned(st) != nil {
		return Result{}
	}
	r := s.restAt(st)
	// With a slack line there may be a second rest, on another line, and which of
	// the two is reached depends on the way.
	slack := func(t float64) bool { return t <= carriesNothing*s.weight }
	if !r.curve.steady() || slices.ContainsFunc(r.tension, slack) {
		return Result{}
	}
	return s.report(h, []rest{r})
}

// posesAt puts the bodies where the balance has them.
func (s *system) posesAt(b *Balance) []pose {
	st := make([]pose, len(s.masses))
	for i := range st {
		is := &b.Bodies[i]
		st[i].q = is.Attitude.unit()
		c := turn(st[i].q, s.model.Bodies[i].CenterOfGravity)
		st[i].at = r3.Sub(r3.Add(is.Origin, c), s.reference)
	}
	return st
}
