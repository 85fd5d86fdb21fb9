package mechanics

import (
	"math"

	"gonum.org/v1/gonum/spatial/r3"
)

// start hangs every body at its intended attitude below what already hangs,
// where its first line comes taut: close to a rest in height, so that no search
// begins far up in a field of slack lines.
func (s *system) start() []pose {
	st := make([]pose, len(s.masses))
	placed := make([]bool, len(s.masses))
	for b := range st {
		st[b].q = s.masses[b].intended
	}
	s.spread(st)
	for range st {
		for b := range st {
			if !placed[b] && s.place(st, placed, b) {
				placed[b] = true
			}
		}
	}
	return st
}

// tie is a run between a point that is placed and a point of a body that is
// not, the latter from its center of gravity; both in world axes.
type tie struct {
	above, arm r3.Vec
	length     float64
}

func (s *system) ties(st []pose, placed []bool, b int) []tie {
	var ties []tie
	stands := func(body int) bool { return body == World || placed[body] }
	for i := range s.strands {
		l := &s.strands[i]
		for _, r := range l.runs {
			mine, other := r.from, r.to
			if other.body == b {
				mine, other = other, mine
			}
			if mine.body != b || !stands(other.body) {
				continue
			}
			_, above := other.arms(st)
			ties = append(ties, tie{above: above, arm: turn(st[b].q, mine.at), length: l.share(st, stands)})
		}
	}
	return ties
}

// share is the length of a run that does not stand between placed bodies, if all
// those of the strand are alike.
func (l *strand) share(st []pose, stands func(body int) bool) float64 {
	left, open := l.length, 0
	for j := range l.runs {
		if r := &l.runs[j]; stands(r.from.body) && stands(r.to.body) {
			left -= r3.Norm(r.span(st))
		} else {
			open++
		}
	}
	return math.Max(left, 0.01*l.length) / float64(max(open, 1))
}

func (s *system) place(st []pose, placed []bool, b int) bool {
	ties := s.ties(st, placed, b)
	if len(ties) == 0 {
		return false
	}
	at := st[b].at
	if !s.masses[b].point {
		at = over(ties)
	}
	at.Z = math.Inf(-1)
	for _, t := range ties {
		d := r3.Sub(t.above, r3.Add(at, t.arm))
		drop := math.Sqrt(math.Max(t.length*t.length-d.X*d.X-d.Y*d.Y, 0.01*t.length*t.length))
		at.Z = math.Max(at.Z, t.above.Z-drop-t.arm.Z)
	}
	st[b].at = at
	return true
}

// over gives the horizontal place of a center of gravity: plumb under the hook
// if all ties meet in one, else so that the points stand on average under what
// they hang from.
func over(ties []tie) r3.Vec {
	var sum r3.Vec
	one := true
	for _, t := range ties {
		sum = r3.Add(sum, r3.Sub(t.above, t.arm))
		one = one && t.above == ties[0].above
	}
	if one {
		return ties[0].above
	}
	return r3.Scale(1/float64(len(ties)), sum)
}

// spread guesses where points stand, seen from above: between what they are joined
// to, close to what short lines join them to. A ring at the end of a bar would
// else begin under the hook, far from the bar.
func (s *system) spread(st []pose) {
	if !s.hasPoints() {
		return
	}
	for range 40 {
		for b := range st {
			s.amid(st, b)
		}
	}
}

// amid moves body b to the mean of where its runs would have it, each over its
// length.
func (s *system) amid(st []pose, b int) {
	var sum r3.Vec
	all := 0.0
	for i := range s.strands {
		l := &s.strands[i]
		for _, r := range l.runs {
			mine, other := r.from, r.to
			if other.body == b {
				mine, other = other, mine
			}
			if mine.body != b {
				continue
			}
			arm, _ := mine.arms(st)
			_, at := other.arms(st)
			w := float64(len(l.runs)) / l.length
			sum = r3.Add(sum, r3.Scale(w, r3.Sub(at, arm)))
			all += w
		}
	}
	st[b].at = r3.Vec{X: sum.X / all, Y: sum.Y / all}
}
