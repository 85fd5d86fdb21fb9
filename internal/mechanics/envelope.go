package mechanics

import "math"

// envelope is what any split of the load may do to the lines.
type envelope struct {
	// cols are the strands whose tensions may be split otherwise: one a line
	// where that balances the load, else one a run of lines that grip.
	cols []strand
	// given is a split over the columns that balances the load.
	given  []float64
	bounds []Bound
	// asRest: the split given is that of the rest.
	asRest bool
}

// envelopeOf finds the bounds at st, a rest with these tensions of the strands.
// What grips is first taken as if it still slid; if no such split balances the
// load here, only friction does, and each run is on its own.
func (s *system) envelopeOf(st []pose, tension []float64) envelope {
	e := envelope{cols: s.strands, given: tension, asRest: true}
	if len(s.strands) != len(s.sliding) {
		if split, ok := s.fittedSplit(st, s.sliding); ok {
			e = envelope{cols: s.sliding, given: split}
		}
	}
	e.bounds = s.bounds(st, e.cols, e.given)
	return e
}

// boundOf is the bound of a line that carries the tension: that of its most
// loaded column.
func (e *envelope) boundOf(line int, tension float64) Bound {
	out := Bound{Meaning: Determinate}
	for i := range e.cols {
		if e.cols[i].line == line && (out.TensionN == 0 || e.bounds[i].TensionN > out.TensionN) {
			out = e.bounds[i]
		}
	}
	return out.atLeast(tension)
}

// atLeast raises a bound to what was computed without it. A split as if a gripping
// line slid can be the only one of its kind, and yet not the one at rest.
func (b Bound) atLeast(computed float64) Bound {
	if b.Meaning == Determinate && math.Abs(computed-b.TensionN) > 1e-6*computed {
		b.Meaning = AnySplit
	}
	if b.Meaning == Determinate {
		b.TensionN = computed
	}
	b.TensionN = math.Max(b.TensionN, computed)
	return b
}
