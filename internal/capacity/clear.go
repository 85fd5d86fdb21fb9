package capacity

// ClearRopeM is the length of plain rope between the splices or sleeves of a
// sling, all in meters: its length from bearing point to bearing point less
// eye and splice at each end (geometry). It is never below 0, and 0 if a
// length is not a number, which is never enough.
func ClearRopeM(lengthM, upperEyeM, upperSpliceM, lowerEyeM, lowerSpliceM float64) float64 {
	clear := lengthM - upperEyeM - upperSpliceM - lowerEyeM - lowerSpliceM
	if !(clear > 0) {
		return 0
	}
	return clear
}

// SpliceLengthRangeD is how long a splice or sleeve is, in rope diameters, at
// the least and at the most. The ranges are wide on purpose (common practice,
// no source to name): they may only decide where a length that is not given
// can't matter. A socket takes no rope and makes no eye.
func SpliceLengthRangeD(t Termination) (least, most float64) {
	switch t {
	case FlemishSleeve, TurnBackSleeve:
		return 3, 8
	case HandTucked, HiddenTuck:
		return 8, 30
	case Socket:
		return 0, 0
	}
	return 3, 30
}
