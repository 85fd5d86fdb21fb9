package capacity

// BridlePractice is how the rated load of a sling or bridle is arrived at.
type BridlePractice string

// The practices.
const (
	// ByAngle rates a bridle by statics at the angle marked on it, with two
	// legs counted of two and three of three or four (US tables, such as OSHA
	// Guidance on Safe Sling Use Table 1, read).
	ByAngle BridlePractice = "by_angle"
	// ByBand rates it by a factor for a band of angles: with two legs 1.4 for
	// 0 to 45 deg from vertical and 1 for 45 to 60, with three and four legs
	// 2.1 and 1.5 (EN 13414-1:2003 Table 4, read).
	ByBand BridlePractice = "by_band"
)

// BridleLegRatedN is what one leg of a bridle may carry along itself, in
// newtons, if the whole is rated for assemblyN at the angle given: R/(n sin b)
// by statics, or R over the factor of the angle's band. The angle plays no
// part with one leg. ok is false for more than four legs or none, an angle
// outside (0, 90] deg, one flatter than 30 deg where bands are used, a practice
// that is not known, and a rating that is none.
func BridleLegRatedN(assemblyN float64, legs int, angleFromHorizontalDeg float64, p BridlePractice) (oneLegN float64, ok bool) {
	factor, ok := legFactor(legs, angleFromHorizontalDeg, p)
	if !ok || !usable(assemblyN) {
		return 0, false
	}
	return assemblyN / factor, true
}

// BridleAssemblyRatedN is what a bridle may be rated for, in newtons, if one
// of its legs may carry oneLegN along itself: the reverse of BridleLegRatedN,
// with the same limits.
func BridleAssemblyRatedN(oneLegN float64, legs int, angleFromHorizontalDeg float64, p BridlePractice) (assemblyN float64, ok bool) {
	factor, ok := legFactor(legs, angleFromHorizontalDeg, p)
	if !ok || !usable(oneLegN) {
		return 0, false
	}
	return oneLegN * factor, true
}

// legFactor is the rating of a bridle over that of one leg.
func legFactor(legs int, fromHorizontalDeg float64, p BridlePractice) (float64, bool) {
	switch {
	case legs < 1 || legs > 4 || (p != ByAngle && p != ByBand):
		return 0, false
	case legs == 1:
		return 1, true
	case !(fromHorizontalDeg > 0 && fromHorizontalDeg <= 90+angleSlackDeg):
		return 0, false
	case p == ByAngle:
		return float64(min(legs, 3)) * sinDeg(fromHorizontalDeg), true
	}
	return bandFactor(legs, fromHorizontalDeg)
}

func bandFactor(legs int, fromHorizontalDeg float64) (float64, bool) {
	least, ok := BandLeastFromHorizontalDeg(fromHorizontalDeg)
	switch {
	case !ok:
		return 0, false
	case least == 45 && legs == 2:
		return 1.4, true
	case least == 45:
		return 2.1, true
	case legs == 2:
		return 1, true
	}
	return 1.5, true
}

// BandLeastFromHorizontalDeg is the flattest angle, from horizontal, at which
// a bridle may be used that is rated for the band in which a tag's angle lies:
// 45 deg for tags at 45 to 90 and 30 deg for those from 30 (EN 13414-1:2003
// Table 4, which counts 0 to 45 and 45 to 60 deg from vertical, read). ok is
// false outside these bands.
func BandLeastFromHorizontalDeg(angleFromHorizontalDeg float64) (leastDeg float64, ok bool) {
	switch {
	case !(angleFromHorizontalDeg <= 90+angleSlackDeg): // NaN too
		return 0, false
	case angleFromHorizontalDeg >= 45-angleSlackDeg:
		return 45, true
	case angleFromHorizontalDeg >= 30-angleSlackDeg:
		return 30, true
	}
	return 0, false
}
