package mechanics

import (
	"slices"

	"gonum.org/v1/gonum/spatial/r3"
)

// asIntended judges the intended attitude with the hook plumb over the center
// of gravity, where this is a position of balance for some line lengths.
func (s *system) asIntended(held []pose) (curve, bool) {
	st, split, ok := s.cutToFit(held)
	if !ok {
		return curve{}, false
	}
	return s.steadiness(st, split), true
}

// looseAsIntended names what nothing holds in place at the intended attitude.
func (s *system) looseAsIntended(held []pose) Result {
	st, split, _ := s.cutToFit(held)
	if free, ok := s.leftFree(st, split); ok {
		return Result{Verdict: NoBalance, Why: []Reason{free}}
	}
	return s.unsettled(st)
}

// cutToFit looks for a position of balance at the intended attitudes and the
// tensions there, whatever the lengths: everything stays as it hangs when held, but
// shifted plumb.
func (s *system) cutToFit(held []pose) (st []pose, split []float64, ok bool) {
	st = slices.Clone(held)
	s.plumb(st)
	split, ok = s.fittedSplit(st, s.strands)
	return st, split, ok
}

// plumb shifts everything sideways so that the common center of gravity stands
// under the hook, where there is only one. Rings that everything hangs through stay
// plumb under it.
func (s *system) plumb(st []pose) {
	hook, one := s.onlyHook()
	if !one {
		return
	}
	above := s.mastersBelowHook()
	var c r3.Vec
	weight := 0.0
	for b := range st {
		if !slices.Contains(above, b) {
			c = r3.Add(c, r3.Scale(s.masses[b].weight, st[b].at))
			weight += s.masses[b].weight
		}
	}
	shift := r3.Sub(hook, r3.Scale(1/weight, c))
	for b := range st {
		if slices.Contains(above, b) {
			st[b].at.X, st[b].at.Y = hook.X, hook.Y
			continue
		}
		st[b].at.X += shift.X
		st[b].at.Y += shift.Y
	}
}

// mastersBelowHook lists the points, from the hook down, through each of which all that
// is below it hangs. The last body is none of them.
func (s *system) mastersBelowHook() []int {
	var above []int
	if !s.hasPoints() {
		return nil
	}
	for len(above) < len(s.masses)-1 {
		next, one := s.onlyBelow(above)
		if !one || !s.masses[next].point {
			break
		}
		above = append(above, next)
	}
	return above
}

// onlyBelow gives the one body that all runs from the hook and the bodies above end
// at.
func (s *system) onlyBelow(above []int) (next int, one bool) {
	in := func(e end) bool { return e.body == World || slices.Contains(above, e.body) }
	_, oneHook := s.onlyHook()
	next, one = World, oneHook
	for i := range s.strands {
		for _, r := range s.strands[i].runs {
			if in(r.from) == in(r.to) {
				continue
			}
			below := r.to.body
			if in(r.to) {
				below = r.from.body
			}
			one = one && (next == World || next == below)
			next = below
		}
	}
	return next, one && next != World
}

// onlyHook gives the one fixed point that all lines to the world share.
func (s *system) onlyHook() (at r3.Vec, one bool) {
	found := false
	one = true
	s.each(func(e end) {
		if e.body == World {
			one = one && (!found || e.at == at)
			at, found = e.at, true
		}
	})
	return at, found && one
}
