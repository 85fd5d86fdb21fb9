package mechanics

import "slices"

// Solve finds how the model hangs. The error, which wraps ErrModel, is for
// models without a meaning; what does not hang well is a verdict.
func Solve(m Model, o Options) (Result, error) {
	o = o.withDefaults()
	if err := check(m, o); err != nil {
		return Result{}, err
	}
	return newSystem(m, o).judge(), nil
}

// hanging is how the bodies hang, held at their intended attitudes.
type hanging struct {
	held []pose
	// found: the forces on the held bodies came to balance.
	found bool
	// intended judges that attitude with lines cut to fit, where that applies.
	intended curve
	applies  bool
}

// judge asks the questions of the package comment in turn.
func (s *system) judge() Result {
	h := hanging{held: s.start()}
	h.found = s.settleByStages(h.held, true)
	if s.grip(h.held) && !h.found {
		return s.unsettled(h.held) // where friction takes hold is not known
	}
	h.intended, h.applies = s.asIntended(h.held)

	st := slices.Clone(h.held)
	ok := s.settleByStages(st, false)
	if why := s.overstretched(st); ok && len(why) > 0 {
		return Result{Verdict: OutOfReach, Why: why}
	}
	if h.applies && !h.intended.known {
		return s.looseAsIntended(h.held)
	}
	if h.applies && !h.intended.steady() {
		return s.overturned(UnsteadyAsIntended, h.held, h.intended)
	}
	if !ok {
		return s.unsettled(st)
	}
	rests, bad := s.rests(st)
	if bad != nil {
		return *bad
	}
	for _, r := range rests {
		if why := s.turned(r.st); len(why) > 0 {
			return Result{Verdict: Overturns, Why: append(s.pointsBelow(), why...)}
		}
	}
	return s.report(h, rests)
}
