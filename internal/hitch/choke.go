package hitch

import (
	"fmt"
	"math"
)

// Choke is how a sling lies that goes round a body and whose standing part
// leaves through its own eye.
type Choke struct {
	LoopM   float64 // rope from the choke point round the body and back to it, all turns
	StandsM float64 // distance of the choke point from the center of the section, along the pull
	Corners int     // edges it bears on, 0 on a round body
}

// Choke lays a choker round the body, pulled up; each turn over one goes once
// right round it besides. The choke angle, in degrees, is the one between the
// standing part and either side of the loop: about 135 for a choke that hangs
// free, and not steady above that (common practice).
//
// From 90 deg up the loop is a roof of two straight sides on the body, each at
// a = 180 deg less the choke angle from the line of the standing part
// (derived). On a circle of radius R they are tangents R cot a long, with their
// point R / sin a from the center and an arc of (pi + 2 a) R; on a box they go
// from over the middle of its top to its upper corners.
//
// Under 90 deg the standing part bends back over the eye and holds the choke
// down on the body: there is no roof, the loop is once round, and the choke
// point lies on the surface. That is where it lies at 90 deg, so that nothing
// jumps there.
func (s Section) Choke(turns int, chokeAngleDeg float64) (Choke, error) {
	if err := s.check(); err != nil {
		return Choke{}, err
	}
	if turns < 1 {
		return Choke{}, fmt.Errorf("a choke has one turn or more, not %d", turns)
	}
	if !(chokeAngleDeg >= 0 && chokeAngleDeg < 180) {
		return Choke{}, fmt.Errorf("a choke angle lies from 0 to under 180 deg between standing part and loop, not at %g", chokeAngleDeg)
	}
	c := s.roof(radians(min(180-chokeAngleDeg, 90)))
	c.LoopM += float64(turns-1) * s.PerimeterM()
	return c, nil
}

// roof is a choke of one turn whose sides make the angle a, at most a right
// one, with the line of the pull.
func (s Section) roof(a float64) Choke {
	sin, cos := math.Sincos(a)
	if s.round() {
		r := s.DiameterM / 2
		return Choke{LoopM: r * (2*cos/sin + math.Pi + 2*a), StandsM: r / sin}
	}
	w := s.WidthM / 2
	return Choke{
		LoopM:   2*w/sin + 2*s.HeightM + s.WidthM,
		StandsM: s.HeightM/2 + w*cos/sin,
		Corners: boxCorners,
	}
}

// ChokeAngleDeg is the angle, in degrees, between the loop and a standing part
// that leaves in the direction given, of any length: along the body's axis,
// across it, up. The sides of the loop lie in the cross-section as a choke of
// naturalDeg lets them while the pull is straight up; the smaller angle of the
// two sides counts: acos((up cos n + |across| sin n) / length) (derived). A
// pull along the axis brings it towards 90 deg, one across lessens it degree by
// degree. It is never more than naturalDeg: leaning opens no choke. It is NaN
// if the pull is no direction or naturalDeg does not lie between 0 and 180 deg.
func ChokeAngleDeg(axial, across, up float64, naturalDeg float64) float64 {
	largest := max(math.Abs(axial), math.Abs(across), math.Abs(up))
	if !usable(largest) || !(naturalDeg > 0 && naturalDeg < 180) {
		return math.NaN()
	}
	axial, across, up = axial/largest, math.Abs(across)/largest, up/largest
	sin, cos := math.Sincos(radians(naturalDeg))
	along := up*cos + across*sin
	off := math.Hypot(axial, up*sin-across*cos) // length of the cross product: exact where acos is not
	return min(degrees(math.Atan2(off, along)), naturalDeg)
}

// ChokeLands tells whether the choke lands on the eye or on its splice or
// sleeve instead of on plain rope, all lengths in meters. Along the sling, from
// the bearing of the choking eye on the standing part, come the eye, its
// splice, then plain rope round the body and back to the bearing, where the
// standing part begins: the loop has to be longer than eye and splice (derived).
// The other end's eye and splice have to fit into the standing part in the same
// way, which the same function tells with the standing part's length. Lengths
// that are none count as landing on it.
func ChokeLands(loopM, eyeM, spliceM float64) bool {
	return !usable(loopM) || !(eyeM >= 0 && spliceM >= 0) || loopM <= eyeM+spliceM
}
