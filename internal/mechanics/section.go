package mechanics

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"
)

// Section is the worst that a body taken as a beam has to pass on through its
// cross sections: each the largest along the beam, newtons and newton meters.
type Section struct {
	// CompressionN and TensionN along the axis; neither is negative.
	CompressionN, TensionN float64
	// ShearN across the axis, both transverse directions together.
	ShearN float64
	// BendingNm is the resultant of both transverse directions, with the axis
	// as neutral line; BendingAtM is the station it stands at, meters along the
	// axis.
	BendingNm, BendingAtM float64
}

// beamForce is a force on a beam: station along the axis, offset from the axis
// and force, in body axes.
type beamForce struct {
	at            float64
	offset, force r3.Vec
}

// SectionForces cuts a body, taken as a beam along the axis (a direction in body
// axes) through the point at, everywhere across and adds up what the part toward
// the axis' tail passes on to the rest: the pulls of the lines, its lumps' weight
// where they are, and what is left of its weight at the center of gravity of that. Where the axis has no direction
// every figure is +Inf.
func SectionForces(m Model, o Options, b *Balance, body int, at, axis r3.Vec) Section {
	if length := r3.Norm(axis); !(length > 0) || !finite(length) || !finiteVec(at) {
		far := math.Inf(1)
		return Section{far, far, far, far, far}
	}
	axis = r3.Unit(axis)
	forces := beamForces(m, o.withDefaults(), b, body, at, axis)
	var out Section
	var sum, moment r3.Vec // of what was passed, about the axis at the station
	station := 0.0
	for i, f := range forces {
		moment = r3.Sub(moment, r3.Scale(f.at-station, r3.Cross(axis, sum)))
		station = f.at
		if i == 0 || f.at-forces[i-1].at > sameStationM {
			out.bend(moment, axis, station)
		}
		sum = r3.Add(sum, f.force)
		moment = r3.Add(moment, r3.Cross(f.offset, f.force))
		if i+1 == len(forces) || forces[i+1].at-f.at > sameStationM {
			out.bend(moment, axis, station)
			out.cut(sum, axis)
		}
	}
	return out
}

// sameStationM is how close forces stand to act on one cross section.
const sameStationM = 1e-9

func beamForces(m Model, o Options, b *Balance, body int, at, axis r3.Vec) []beamForce {
	var forces []beamForce
	add := func(place, force r3.Vec) {
		r := r3.Sub(place, at)
		x := r3.Dot(r, axis)
		forces = append(forces, beamForce{x, r3.Sub(r, r3.Scale(x, axis)), force})
	}
	is := &m.Bodies[body]
	eachPull(m, b, body, add)
	weight := func(massKg float64) r3.Vec { return b.Bodies[body].Attitude.Body(r3.Vec{Z: -massKg * o.GravityMS2}) }
	rest, moment := is.MassKg, r3.Scale(is.MassKg, is.CenterOfGravity)
	for _, lump := range is.Lumps {
		add(lump.At, weight(lump.MassKg))
		rest -= lump.MassKg
		moment = r3.Sub(moment, r3.Scale(lump.MassKg, lump.At))
	}
	if rest > 0 {
		add(r3.Scale(1/rest, moment), weight(rest))
	}
	slices.SortStableFunc(forces, func(a, b beamForce) int { return cmp.Compare(a.at, b.at) })
	return forces
}

// bend takes the part of a moment across the axis.
func (s *Section) bend(moment, axis r3.Vec, station float64) {
	across := r3.Sub(moment, r3.Scale(r3.Dot(moment, axis), axis))
	if is := r3.Norm(across); is > s.BendingNm*(1+1e-9) {
		s.BendingNm, s.BendingAtM = is, station
	}
}

// cut takes the force on the part toward the tail: along the axis it presses that
// part against the rest.
func (s *Section) cut(sum, axis r3.Vec) {
	along := r3.Dot(sum, axis)
	s.CompressionN = math.Max(s.CompressionN, along)
	s.TensionN = math.Max(s.TensionN, -along)
	s.ShearN = math.Max(s.ShearN, r3.Norm(r3.Sub(sum, r3.Scale(along, axis))))
}
