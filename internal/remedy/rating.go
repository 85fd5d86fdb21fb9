package remedy

import "math"

// higherRating names the least rated load, as used, that keeps a part within
// the limit: force over the share that is allowed, rounded up to what tags
// show.
func (m *Mender) higherRating(a ask) (string, bool) {
	load, ok := a.number("load_n")
	if !ok || a.limit <= 0 {
		return "", false
	}
	text := "a part rated for at least " + m.ratedText(load/a.limit, ceilTo) + " as used"
	if steeperHelps(a) {
		text += ", or less force in it: steeper legs"
	}
	return text, true
}

// steeperHelps reports whether the angle of the legs has a say: not where a part
// carries all, unless its rated load is lowered for their angle.
func steeperHelps(a ask) bool {
	by, _ := a.subject.Field("judged_by")
	rated, known := a.number("rated_load_n")
	marked, given := a.number("marked_load_n")
	return by != "whole_load" || known && given && rated < marked
}

// ceilTo rounds up to a multiple of the step. What lies above one by less than
// rounding counts as that one.
func ceilTo(x, step float64) float64 { return math.Ceil(x/step-1e-9) * step }
