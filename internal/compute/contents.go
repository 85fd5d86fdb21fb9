package compute

import (
	"math"

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
		l.CenterOutsideM = ptr(max(outside(center.X, size.Length), outside(center.Y, size.Width), outside(center.Z, size.Height)))
	}
}

// outside is how far a coordinate lies beyond a size that may extend either way
// from the datum.
func outside(at, size quantity.Length) float64 {
	return math.Max(0, math.Abs(float64(at))-float64(size))
}
