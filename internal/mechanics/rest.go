package mechanics

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"
)

// rest is a position of balance from which the load does not go far.
type rest struct {
	st      []pose
	tension []float64
	curve   curve
	// rocks: nothing rights it within small angles, until other lines catch it.
	rocks bool
}

const (
	// kickRad is how far a load is pushed out of a position in which it balances
	// but can not stay: far above rounding, far below any limit.
	kickRad = 1e-3
	// rockRad is how far a load that rocks may go at most.
	rockRad = 0.1
	// barrier is what it must lose, over weight and arm, in going there.
	barrier = 1e-6
	// level is the righting, over the arm, that is neither ridge nor valley:
	// far above rounding, far below what any drawing states.
	level = 1e-6
)

// rests turns the settled position st into the rests that the load can end in:
// st itself if it is steady there, else where it goes when pushed off to
// either side. A minimizer started in perfect symmetry stops on the ridge.
func (s *system) rests(st []pose) ([]rest, *Result) {
	r := s.restAt(st)
	if !r.curve.known {
		res := s.unsettled(st)
		return nil, &res
	}
	if s.holds(&r, r.curve.rightingM > -level*s.arm) {
		return []rest{r}, nil
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

// holds says whether the load stays at r, or at least near it.
func (s *system) holds(r *rest, mayRock bool) bool {
	if r.curve.steady() {
		return true
	}
	r.rocks = mayRock && r.curve.known && s.confined(r)
	return r.rocks
}

// pushOff follows the load from an unsteady position, several times over if it
// meets another one.
func (s *system) pushOff(from []pose, c curve, way float64) (rest, bool) {
	r := rest{st: slices.Clone(from)}
	for range 4 {
		s.kick(r.st, c.turns, way*kickRad)
		// Not by stages: softer lines could carry it back onto the ridge.
		s.settle(r.st, true)
		if !s.settle(r.st, false) {
			return r, false
		}
		if r = s.restAt(r.st); r.curve.steady() || !r.curve.known {
			return r, r.curve.known
		}
		c = r.curve
	}
	return r, s.holds(&r, true)
}

func (s *system) kick(st []pose, turns []float64, by float64) {
	for b := range st {
		if s.masses[b].point {
			continue
		}
		v := turns[s.masses[b].turn:]
		st[b].q = then(st[b].q, r3.Scale(by, r3.Vec{X: v[0], Y: v[1], Z: v[2]}))
	}
}

// confined says whether the load would have to rise to go far in any of the
// turns that nothing rights at once: a load on two legs, its center of gravity
// level with their points, rocks until a slack leg catches it.
func (s *system) confined(r *rest) bool {
	by := math.Min(rockRad, s.opt.MaxTiltDeg*math.Pi/360)
	floor := s.energy(r.st) + barrier*s.weight*s.arm
	for _, turns := range r.curve.loose {
		for _, way := range []float64{by, -by} {
			st := slices.Clone(r.st)
			s.kick(st, turns, way)
			if !s.settle(st, true) || s.energy(st) < floor {
				return false
			}
		}
	}
	return true
}

// energy is gravity plus stretch energy at st, joules.
func (s *system) energy(st []pose) float64 {
	sum := 0.0
	for b := range st {
		sum += s.masses[b].weight * st[b].at.Z
	}
	for i := range s.strands {
		l := &s.strands[i]
		e := math.Max(0, l.reach(st)-l.length)
		sum += 0.5 * l.rate * e * e
	}
	return sum
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
		t[i] = math.Max(0, l.rate*(l.reach(st)-l.length))
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
