package mechanics

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"
)

// spin is a turn that no line and no weight resists, at any rest: known from
// how the model is put together, and no sign of an unsteady load.
//
// With roll set, it is one body rolling about the line (axis, body axes) that
// holds all its points and its center of gravity. Otherwise the bodies turn
// together about the vertical through a point (or through hooks one above the
// other) at which everything between them and the rest meets.
type spin struct {
	bodies []int
	about  end
	roll   bool
	axis   r3.Vec
}

// onLine is how far from a line a center of gravity may stand, over the body's
// arm, to count as on it.
const onLine = 1e-6

func findSpins(s *system) []spin {
	var spins []spin
	seen := map[end]bool{}
	s.each(func(e end) {
		if !seen[e] {
			seen[e] = true
			spins = append(spins, s.spinsAbout(e, nil)...)
		}
	})
	for b := range s.masses {
		if axis, ok := s.rollAxis(b); ok {
			spins = append(spins, spin{bodies: []int{b}, about: end{body: World}, roll: true, axis: axis})
		}
	}
	return spins
}

// idleSpins are the turns about the vertical that only slack lines stand in the way
// of: those too let nothing fall.
func (s *system) idleSpins(tension []float64) []spin {
	idle := make([]bool, len(s.strands))
	for i := range idle {
		idle[i] = tension[i] <= s.idle
	}
	if !slices.Contains(idle, true) {
		return nil
	}
	var spins []spin
	seen := map[end]bool{}
	s.each(func(e end) {
		if !seen[e] {
			seen[e] = true
			spins = append(spins, s.spinsAbout(e, idle)...)
		}
	})
	return spins
}

// spinsAbout cuts every line at the point e, those that are idle besides, and
// looks for parts of the model that lost their last hook by it. They can turn
// about the vertical through e.
func (s *system) spinsAbout(e end, idle []bool) []spin {
	var spins []spin
	done := make([]bool, len(s.masses))
	for b := range s.masses {
		if done[b] {
			continue
		}
		part, hung := s.partOf(b, e, idle)
		for _, p := range part {
			done[p] = true
		}
		if !hung && (idle == nil || s.hangs(b, idle)) {
			spins = append(spins, spin{bodies: part, about: e})
		}
	}
	return spins
}

// hangs reports whether a body still reaches a hook with idle lines cut.
func (s *system) hangs(b int, idle []bool) bool {
	_, hung := s.partOf(b, end{body: nowhere}, idle)
	return hung
}

// nowhere is the body of an end at which no line ends.
const nowhere = World - 1

// partOf lists the bodies still joined to b with the lines at e and those that are
// idle cut, and says whether one of them still reaches a hook.
func (s *system) partOf(b int, e end, idle []bool) (part []int, hung bool) {
	in := make([]bool, len(s.masses))
	in[b] = true
	part = []int{b}
	for i := 0; i < len(part); i++ {
		for k := range s.strands {
			if idle != nil && idle[k] {
				continue
			}
			for _, r := range s.strands[k].runs {
				other, joined := r.across(part[i])
				switch {
				case !joined || r.from.turnsWith(e) || r.to.turnsWith(e):
				case other == World:
					hung = true
				case !in[other]:
					in[other] = true
					part = append(part, other)
				}
			}
		}
	}
	return part, hung
}

// samePlumbM is how far hooks may stand beside each other, in meters, to count as one
// above the other.
const samePlumbM = 1e-6

// turnsWith says whether a turn about the vertical through e leaves f in place:
// the same point, or hooks one above the other.
func (f end) turnsWith(e end) bool {
	return f == e || f.body == World && e.body == World && math.Hypot(f.at.X-e.at.X, f.at.Y-e.at.Y) <= samePlumbM
}

// points lists where lines hold body b, from its center of gravity.
func (s *system) points(b int) []r3.Vec {
	var at []r3.Vec
	s.each(func(e end) {
		if e.body == b {
			at = append(at, e.at)
		}
	})
	return at
}

// holdingLine gives a point and the unit direction of the line through all
// points of body b. A single point has no direction. False: not on one line.
func (s *system) holdingLine(b int) (at, along r3.Vec, ok bool) {
	points := s.points(b)
	tol := onLine * s.masses[b].arm
	at = points[0]
	for _, p := range points {
		if d := r3.Sub(p, at); r3.Norm(d) > max(tol, r3.Norm(along)) {
			along = d
		}
	}
	if along == (r3.Vec{}) {
		return at, along, true
	}
	along = r3.Unit(along)
	for _, p := range points {
		if r3.Norm(r3.Cross(r3.Sub(p, at), along)) > tol {
			return at, along, false
		}
	}
	return at, along, true
}

// rollAxis finds the line that holds all points of body b and its center of
// gravity.
func (s *system) rollAxis(b int) (r3.Vec, bool) {
	at, along, ok := s.holdingLine(b)
	tol := onLine * s.masses[b].arm
	switch {
	case !ok || s.masses[b].point:
		return r3.Vec{}, false
	case along == (r3.Vec{}):
		if r3.Norm(at) <= tol {
			return r3.Vec{}, false // held at its center: every turn is free
		}
		return r3.Unit(at), true
	}
	return along, r3.Norm(r3.Cross(at, along)) <= tol
}

// restrain adds to a factor of the second derivatives what keeps a step from
// wandering along free spins, on which nothing depends.
func (s *system) restrain(st []pose) {
	stiff := 0.0
	for i := range s.n {
		stiff = max(stiff, s.factor[i*s.n+i])
	}
	for i := range s.spins {
		u := s.along(st, &s.spins[i])
		// A ring plumb under the point does not move at all.
		if uu := dot(u, u); uu > 1e-12*s.arm*s.arm {
			addDyad(s.factor, s.n, stiff/uu, u)
		}
	}
}

// along is the spin at st in the freedoms of derive.
func (s *system) along(st []pose, p *spin) []float64 {
	u := s.way
	clear(u)
	_, center := p.about.arms(st)
	for _, b := range p.bodies {
		w := up()
		if p.roll {
			w = turn(st[b].q, p.axis)
		} else {
			add3(u[s.masses[b].o:], r3.Cross(w, r3.Sub(st[b].at, center)))
		}
		if !s.masses[b].point {
			add3(u[s.masses[b].o+3:], r3.Scale(s.masses[b].arm, w))
		}
	}
	return u
}

// fill writes the spin's turns at st into v, three a body that can turn, in
// radians.
func (s *system) fill(st []pose, p *spin, v []float64) {
	clear(v)
	for _, b := range p.bodies {
		if s.masses[b].point {
			continue
		}
		w := up()
		if p.roll {
			w = turn(st[b].q, p.axis)
		}
		add3(v[s.masses[b].turn:], w)
	}
}
