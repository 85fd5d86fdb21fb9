package capacity

// ShacklePullFactor is the part of a shackle's rating that is left when the
// pull, in the plane of the bow, is inclined towards an end of the pin. offDeg
// is measured from the line at right angles to the pin: up to 5 deg 1, up to
// 45 deg 0.70, up to 90 deg 0.50, and between two bands the worse of them
// (factors common practice; bands read in WAC 296-155-33905). Over 90 deg, and
// for an angle that is none, it is not done: ok is false.
func ShacklePullFactor(offDeg float64) (factor float64, ok bool) {
	switch {
	case !(offDeg >= 0): // NaN too
		return 0, false
	case offDeg <= 5+angleSlackDeg:
		return 1, true
	case offDeg <= 45+angleSlackDeg:
		return 0.70, true
	case offDeg <= 90+angleSlackDeg:
		return 0.50, true
	}
	return 0, false
}
