package capacity

import "math"

// inLineDeg is how far from its axis a pull on an eyebolt still counts as in
// line (common practice: series of eyebolts give full rating for 0 to 5 deg).
const inLineDeg = 5

// AngleRating is what a fitting is rated for, in newtons, when pulled at an
// angle from its axis, in degrees.
type AngleRating struct{ OffAxisDeg, RatedN float64 }

// RatedAtAngleN is what a fitting such as a shouldered eyebolt may carry, in
// newtons, at an angle from its axis. Within 5 deg that is its rating in line;
// beyond, the rating listed for the next angle that is as large or larger, and
// never more than one listed for a smaller angle: series differ too much to
// draw a line between two ratings (common practice). Beyond the largest angle
// listed it is not known, and neither is it where the list holds something
// that is no rating: ok is false.
func RatedAtAngleN(inLineN float64, at []AngleRating, offAxisDeg float64) (ratedN float64, ok bool) {
	bound, ok := boundingAngleDeg(at, offAxisDeg)
	if !ok || !usable(inLineN) {
		return 0, false
	}
	ratedN = inLineN
	for _, r := range at {
		if !(r.RatedN >= 0) || !(r.OffAxisDeg >= 0 && r.OffAxisDeg <= 90) {
			return 0, false
		}
		if r.OffAxisDeg <= bound {
			ratedN = min(ratedN, r.RatedN)
		}
	}
	return ratedN, true
}

// boundingAngleDeg is the angle up to which listed ratings bear on a pull: its
// own while it counts as in line, else the smallest listed that is no smaller.
func boundingAngleDeg(at []AngleRating, offAxisDeg float64) (deg float64, ok bool) {
	if !(offAxisDeg >= 0) {
		return 0, false
	}
	if offAxisDeg <= inLineDeg+angleSlackDeg {
		return offAxisDeg + angleSlackDeg, true
	}
	deg = math.Inf(1)
	for _, r := range at {
		if r.OffAxisDeg >= offAxisDeg-angleSlackDeg {
			deg = min(deg, r.OffAxisDeg)
		}
	}
	return deg, !math.IsInf(deg, 1)
}

// usable tells whether a force or a dimension is one: above zero and finite.
func usable(x float64) bool { return x > 0 && !math.IsInf(x, 1) }
