package capacity

import "math"

// angleSlackDeg is left for rounding where an angle that was computed meets
// the bound of a band: 44.9999999 and 45.0000001 deg both count as 45.
const angleSlackDeg = 1e-6

// IncludedAngleDeg is the angle between two directions, 0 to 180 deg, such as
// that between two legs gathered in the bow of a shackle (geometry). The
// vectors may have any length; it is NaN if one of them is no direction.
func IncludedAngleDeg(u, v [3]float64) float64 {
	along, across := alongAndAcross(u, v)
	return degrees(math.Atan2(across, along))
}

// OffAxisDeg is the angle between a pull and an axis that has no head or tail,
// 0 to 90 deg, such as that of an eyebolt (geometry). It is NaN if one of them
// is no direction.
func OffAxisDeg(pull, axis [3]float64) float64 {
	along, across := alongAndAcross(pull, axis)
	return degrees(math.Atan2(across, math.Abs(along)))
}

// OffPlaneDeg is the angle between a pull and the plane with the normal given,
// 0 to 90 deg: asin |pull . normal| for unit vectors (geometry). It is NaN if
// one of them is no direction.
func OffPlaneDeg(pull, normal [3]float64) float64 {
	along, across := alongAndAcross(pull, normal)
	return degrees(math.Atan2(math.Abs(along), across))
}

// alongAndAcross are the dot product of the two directions and the length of
// their cross product, both scaled alike. The arc tangent of the two is exact
// near 0 and 90 deg, where arc sine and arc cosine are not.
func alongAndAcross(u, v [3]float64) (along, across float64) {
	u, v = scaled(u), scaled(v)
	x, y, z := u[1]*v[2]-u[2]*v[1], u[2]*v[0]-u[0]*v[2], u[0]*v[1]-u[1]*v[0]
	return u[0]*v[0] + u[1]*v[1] + u[2]*v[2], math.Sqrt(x*x + y*y + z*z)
}

// scaled brings the largest component to 1. A vector without length has no
// direction: it becomes NaN rather than an angle of 0 that would look fine.
func scaled(v [3]float64) [3]float64 {
	largest := max(math.Abs(v[0]), math.Abs(v[1]), math.Abs(v[2]))
	for i := range v {
		v[i] /= largest
	}
	return v
}

func degrees(radians float64) float64 { return radians * 180 / math.Pi }

func sinDeg(deg float64) float64 { return math.Sin(deg * math.Pi / 180) }
