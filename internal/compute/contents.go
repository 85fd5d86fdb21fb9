package compute

import (
	"liftlint/internal/facts"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// contents says whether anything in the load can move, and whether it is
// hazardous and what is done about that.
func contents(c *plan.Contents) (state, hazard string) {
	switch {
	case c == nil:
		return "not_given", "not_given"
	case c.Hazardous != nil && *c.Hazardous && c.Precaution == "":
		return c.State, "without_precaution"
	case c.Hazardous != nil && *c.Hazardous:
		return c.State, "with_precaution"
	case c.Hazardous != nil || c.State == "none":
		return c.State, "none"
	}
	return c.State, "not_given"
}

// placeCenter sets how far the center of gravity lies outside the load, which
// reaches from the datum corner by its size, to whichever side the attachments
// lie.
func (w *work) placeCenter(l *facts.Load) {
	size, center := w.plan.Load.Size, w.plan.Load.CenterOfGravity
	l.SizeGiven = size != nil
	switch {
	case size == nil:
	case center == nil:
		w.wait(l.Key, []facts.Input{input("/load", "center_of_gravity", "the load's center of gravity")}, "center_outside_m")
	default:
		side := w.sideOfDatum()
		l.CenterOutsideM = ptr(max(outside(center.X, side.X, size.Length), outside(center.Y, side.Y, size.Width), outside(center.Z, side.Z, size.Height)))
	}
}

// sideOfDatum adds up where the attachments and the bodies lie, from the datum.
func (w *work) sideOfDatum() plan.Point {
	var sum plan.Point
	add := func(p plan.Point) { sum.X, sum.Y, sum.Z = sum.X+p.X, sum.Y+p.Y, sum.Z+p.Z }
	for _, a := range w.plan.Load.Attachments {
		if a.At != nil {
			add(*a.At)
		}
	}
	for _, b := range w.plan.Load.Bodies {
		add(b.Start)
	}
	return sum
}

// outside is how far a coordinate lies beyond a size that extends from the datum
// to the side given; either way where that is none.
func outside(at, side, size quantity.Length) float64 {
	low, high := 0.0, float64(size)
	switch {
	case side < 0:
		low, high = -high, 0
	case side == 0:
		low = -high
	}
	return max(0, low-float64(at), float64(at)-high)
}
