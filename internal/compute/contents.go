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
		low, high := w.reach()
		l.CenterOutsideM = ptr(max(outside(center.X, low.X, high.X, size.Length), outside(center.Y, low.Y, high.Y, size.Width), outside(center.Z, low.Z, high.Z, size.Height)))
	}
}

// reach is how far the attachments and the bodies lie to both sides of the datum.
func (w *work) reach() (low, high plan.Point) {
	add := func(p plan.Point) {
		low = plan.Point{X: min(low.X, p.X), Y: min(low.Y, p.Y), Z: min(low.Z, p.Z)}
		high = plan.Point{X: max(high.X, p.X), Y: max(high.Y, p.Y), Z: max(high.Z, p.Z)}
	}
	for _, a := range w.plan.Load.Attachments {
		if a.At != nil {
			add(*a.At)
		}
	}
	for _, b := range w.plan.Load.Bodies {
		add(b.Start)
	}
	return low, high
}

// outside is how far a coordinate lies beyond a size that extends from the datum to
// the side on which things lie; either way where they lie on both, or on none.
func outside(at, low, high, size quantity.Length) float64 {
	from, to := -size, size
	switch {
	case low < 0 && high <= 0:
		to = 0
	case high > 0 && low >= 0:
		from = 0
	}
	return max(0, float64(from-at), float64(at-to))
}
