package mechanics

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"
)

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

// rest is a position of balance that pushes back.
type rest struct {
	st      []pose
	tension []float64
	curve   curve
}

// kickRad is how far a load is pushed out of a position in which it balances
// but can not stay: far above rounding, far below any limit.
const kickRad = 1e-3

// rests turns the settled position st into the rests that the load can end in:
// st itself if it is steady there, else where it goes when pushed off to
// either side. A minimizer started in perfect symmetry stops on the ridge.
func (s *system) rests(st []pose) ([]rest, *Result) {
	r := s.restAt(st)
	if r.curve.steady() {
		return []rest{r}, nil
	}
	if !r.curve.known {
		res := s.unsettled(st)
		return nil, &res
	}
	var out []rest
	for _, way := range []float64{1, -1} {
		side, ok := s.pushOff(st, r.curve, way)
		if why := s.overstretched(side.st); ok && len(why) > 0 {
			return nil, &Result{Verdict: OutOfReach, Why: why}
		}
		if !ok || len(s.turned(side.st)) > 0 {
			res := s.overturned(UnsteadyAtRest, st, r.curve)
			return nil, &res
		}
		out = append(out, side)
	}
	if peak(out[1].tension) > peak(out[0].tension)*(1+1e-9) {
		slices.Reverse(out)
	}
	return out, nil
}

// pushOff follows the load from an unsteady position, several times over if it
// meets another one.
func (s *system) pushOff(from []pose, c curve, way float64) (rest, bool) {
	st := slices.Clone(from)
	for range 4 {
		for b := range st {
			var w r3.Vec
			w.X, w.Y, w.Z = c.turns[3*b], c.turns[3*b+1], c.turns[3*b+2]
			st[b].q = then(st[b].q, r3.Scale(way*kickRad, w))
		}
		// Not by stages: softer lines could carry it back onto the ridge.
		s.settle(st, true)
		if !s.settle(st, false) {
			return rest{st: st}, false
		}
		r := s.restAt(st)
		if r.curve.steady() {
			return r, true
		}
		if !r.curve.known {
			break
		}
		c = r.curve
	}
	return rest{st: st}, false
}

func (s *system) restAt(st []pose) rest {
	r := rest{st: st, tension: s.tensions(st)}
	r.curve = s.steadiness(st, r.tension)
	return r
}

func (s *system) tensions(st []pose) []float64 {
	t := make([]float64, len(s.strands))
	for i := range s.strands {
		l := &s.strands[i]
		t[i] = math.Max(0, l.rate*(r3.Norm(l.span(st))-l.length))
	}
	return t
}

func peak(v []float64) float64 {
	top := 0.0
	for _, x := range v {
		top = math.Max(top, x)
	}
	return top
}
