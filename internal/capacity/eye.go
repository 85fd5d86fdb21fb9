package capacity

import "math"

// EyeIncludedAngleDeg is the angle between the two sides of an eye that is
// spread over a round body: 2 asin(D / (2 Le - D)), with the inside length Le
// from bearing point to crotch and the body's width D, both in meters
// (derived from the tangents drawn from the crotch to the body). A body as
// wide as the eye is long, or wider, spreads it to 180 deg or can't enter.
func EyeIncludedAngleDeg(eyeLengthM, bodyWidthM float64) float64 {
	reach := 2*eyeLengthM - bodyWidthM
	if bodyWidthM >= reach {
		return 180
	}
	return 2 * math.Asin(bodyWidthM/reach) * 180 / math.Pi
}
