package capacity

import "math"

// CountedShareN is the force in one leg of a rigid load, in newtons, if only
// so many legs carry it evenly: W / (n sin b), b from horizontal. Rated-load
// tables for bridles are built so; which n is the profile's.
func CountedShareN(weightN float64, legsThatCount int, angleFromHorizontalDeg float64) float64 {
	return weightN / (float64(legsThatCount) * math.Sin(angleFromHorizontalDeg*math.Pi/180))
}
