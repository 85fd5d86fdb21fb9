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

// judge asks the questions of the package comment in turn.
func (s *system) judge() Result {
	held := s.start()
	s.settleByStages(held, true)
	intended, applies := s.asIntended(held)

	st := slices.Clone(held)
	ok := s.settleByStages(st, false)
	if why := s.overstretched(st); ok && len(why) > 0 {
		return Result{Verdict: OutOfReach, Why: why}
	}
	if applies && !intended.steady() {
		return s.overturned(UnsteadyAsIntended, held, intended)
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
	return s.report(held, rests, intended, applies)
}

// asIntended judges the intended attitude with the hook plumb over the center
// of gravity, where this is a position of balance for some line lengths.
func (s *system) asIntended(held []pose) (curve, bool) {
	st := s.plumb(held)
	split, ok := s.fittedSplit(st)
	if !ok {
		return curve{}, false
	}
	return s.steadiness(st, split), true
}
