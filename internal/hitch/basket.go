package hitch

import (
	"errors"
	"fmt"
	"math"
)

// Basket is how a sling lies that comes down to a body, goes under it and up
// again. Left and Right are where it leaves the body: the points of contact of
// the tangents on a circle, corners of a box. Where a part runs along a side
// of a box, it leaves at the lower corner.
type Basket struct {
	Left, Right Point
	RoundM      float64 // length in contact between the two points, all turns
	TurnedRad   float64 // angle through which the rope is bent in all: the angle of wrap for friction
	Corners     int     // edges it bears on, 0 on a round body
}

// Basket lays a sling from the support left under the body and up to the
// support right. With one turn that is a plain basket; each further turn goes
// once right round the body besides, two being a double wrap. The rope is taut,
// so that its parts are straight and touch the body as tangents (geometry). It
// is an error if a support lies in the body or on it, if a part would leave the
// body level or downwards, so that it carries nothing from below, and if the
// two parts cross.
func (s Section) Basket(left, right Point, turns int) (Basket, error) {
	if err := s.check(); err != nil {
		return Basket{}, err
	}
	if turns < 1 {
		return Basket{}, fmt.Errorf("a basket has one turn or more, not %d", turns)
	}
	l, err := s.rise(Point{-left.Y, left.Z})
	if err != nil {
		return Basket{}, fmt.Errorf("left part: %w", err)
	}
	l.contact.Y *= -1
	r, err := s.rise(right)
	if err != nil {
		return Basket{}, fmt.Errorf("right part: %w", err)
	}
	if cross(l.contact, left, r.contact, right) {
		return Basket{}, errors.New("the two parts cross over the body: each has to go up on its own side")
	}
	return s.joined(l, r, turns), nil
}

// joined puts the two halves of a basket together.
func (s Section) joined(l, r half, turns int) Basket {
	extra := float64(turns - 1)
	b := Basket{
		Left: l.contact, Right: r.contact,
		RoundM:    l.roundM + r.roundM + extra*s.PerimeterM(),
		TurnedRad: l.turnedRad + r.turnedRad + extra*2*math.Pi,
		Corners:   l.corners + r.corners,
	}
	if extra > 0 && !s.round() {
		b.Corners = boxCorners
	}
	return b
}

const boxCorners = 4

// half is a sling's way from the middle of the body's underside, where it is
// level, up the right side to where it leaves for a support.
type half struct {
	contact           Point
	roundM, turnedRad float64
	corners           int
}

// rise lays the right half. The left one is its mirror image.
func (s Section) rise(to Point) (half, error) {
	switch {
	case !finite(to):
		return half{}, errors.New("its support has no place")
	case s.holds(to):
		return half{}, fmt.Errorf("its support, %.3f m across and %.3f m above the middle, lies in the body or on it", to.Y, to.Z)
	}
	h, rises := s.riseBox(to)
	if s.round() {
		h, rises = s.riseRound(to)
	}
	if !rises {
		return half{}, errors.New("it does not go up from the body to its support, so that it carries nothing from below")
	}
	return h, nil
}

// riseRound follows the circle from its lowest point to where the tangent
// meets the support: the angle of the support less acos(R/distance).
func (s Section) riseRound(to Point) (half, bool) {
	r := s.DiameterM / 2
	around := math.Atan2(to.Y, -to.Z) // from straight down, counterclockwise
	if around < 0 {
		around += 2 * math.Pi
	}
	turned := around - math.Acos(r/math.Hypot(to.Y, to.Z))
	sin, cos := math.Sincos(turned)
	return half{contact: Point{r * sin, -r * cos}, roundM: r * turned, turnedRad: turned}, turned > 0 && turned < math.Pi
}

// alongSide is how far inside the side of a box a support may stand, as a share of
// its half width, for a part to count as running along that side: rounding may not
// say at which corner the load is held.
const alongSide = 1e-6

// riseBox leaves at the lower right corner for a support beside the box or straight
// over its side, and at the upper right one for a support above it. No other way
// goes up.
func (s Section) riseBox(to Point) (half, bool) {
	w, h := s.WidthM/2, s.HeightM/2
	switch {
	case to.Y >= w*(1-alongSide):
		return half{Point{w, -h}, w, math.Atan2(to.Z+h, to.Y-w), 1}, to.Z > -h
	case to.Z > h:
		return half{Point{w, h}, w + s.HeightM, math.Atan2(to.Z-h, to.Y-w), 2}, true
	}
	return half{}, false
}

// cross tells whether the straight parts a to b and c to d cross. Two that
// meet at their ends, in one hook, do not.
func cross(a, b, c, d Point) bool {
	const hair = 1e-9 // of a part's length
	u, v, w := Point{b.Y - a.Y, b.Z - a.Z}, Point{d.Y - c.Y, d.Z - c.Z}, Point{c.Y - a.Y, c.Z - a.Z}
	det := u.Y*v.Z - u.Z*v.Y
	along := (w.Y*v.Z - w.Z*v.Y) / det // of the first part; no number where they are parallel
	other := (w.Y*u.Z - w.Z*u.Y) / det
	return along > 0 && along < 1-hair && other > 0 && other < 1-hair
}
