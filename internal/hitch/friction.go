package hitch

import "math"

// HoldsRatio is the largest ratio, of the greater to the lesser force in the
// two parts of a sling, at which friction mu still keeps it from sliding round
// a body that turns it through an angle in radians: e^(mu a), the equation of
// belt and capstan. It holds for any convex body, corners as well. Unless both
// are zero or more and finite it is 0, which no ratio meets.
func HoldsRatio(mu, turnedRad float64) float64 {
	if !(mu >= 0 && turnedRad >= 0) || math.IsInf(mu, 1) || math.IsInf(turnedRad, 1) {
		return 0
	}
	return math.Exp(mu * turnedRad)
}

// SideLeanDeg is how far a part of a basket leans along the body's axis as
// seen from the side, in degrees, 0 to 180: the angle from up of its direction
// (along the axis, up; of any length) in the plane of the two. What it goes
// across does not count; see NeededFriction. It is NaN if there is no
// direction in that plane.
func SideLeanDeg(axial, up float64) float64 {
	largest := max(math.Abs(axial), math.Abs(up))
	return degrees(math.Atan2(math.Abs(axial)/largest, up/largest))
}

// NeededFriction is the least coefficient of friction that keeps an inclined
// part of a basket from sliding along the body: tan lean (derived). The lean is
// SideLeanDeg; where the parts go straight up that is also the angle from the
// plane across the axis. Pulls along the axis are set against what presses the
// sling upwards on the body, which is less than it presses in all; the angle
// from the plane across the axis would not do for parts that spread, which
// press little. It takes the whole of the friction: what already keeps the two
// parts unequal is not left for this. The sign does not matter. From 90 deg on,
// and for what is no angle, no friction is enough: +Inf.
func NeededFriction(leanDeg float64) float64 {
	lean := math.Abs(leanDeg)
	if !(lean < 90) {
		return math.Inf(1)
	}
	return math.Tan(radians(lean))
}
