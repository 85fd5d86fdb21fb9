package capacity

import "fmt"

// usualWebEyeM is the length of the shortest eyes of webbing that are usual, in
// meters: US tables of webbing of one and two inches give 8 in (common practice).
const usualWebEyeM = 0.2

// leastEyeOverHook is the least length of a soft eye of webbing over the thickness of
// the hook in it (EN 1492-1, from memory); its sides then stand 20 deg apart.
const leastEyeOverHook = 3.5

// EveryWebEyeGoesOver reports whether something is so thin, by its thickness in meters,
// that every usual eye of webbing is long enough for it.
func EveryWebEyeGoesOver(thicknessM float64) bool {
	return thicknessM <= usualWebEyeM/leastEyeOverHook*(1+sameSize)
}

// BearingPressurePa is the pressure of fabric on a hook or a fitting, in pascals: the
// force over the thickness of that, in meters, times the width that the fabric lies in
// (WSTDA-RS-1, from memory). It is an error where one of these is none.
func BearingPressurePa(forceN, thicknessM, widthM float64) (float64, error) {
	if !(forceN >= 0) || !usable(thicknessM) || !usable(widthM) {
		return 0, fmt.Errorf("%g N on a thickness of %g m and a width of %g m is no bearing", forceN, thicknessM, widthM)
	}
	return forceN / (thicknessM * widthM), nil
}
