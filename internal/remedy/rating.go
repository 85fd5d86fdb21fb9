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
	if off, ok := a.number("pull_off_deg"); ok && off > inLineDeg {
		return text + turnInto(a), true
	}
	if m.steeperHelps(a) {
		text += ", or less force in it: steeper legs"
	}
	return text, true
}

// inLineDeg is how far off its line a pull may be and count as in line (common
// practice).
const inLineDeg = 5.0

// turnInto is what helps a part that is pulled off its line.
func turnInto(a ask) string {
	if kind, _ := a.subject.Field("kind"); kind == "shackle" {
		return ", which takes a larger shackle, or the lug turned into the pull"
	}
	return ", or the lug turned into the pull"
}

// steepDeg is the angle from horizontal from which steeper legs take next to
// nothing off their force: 1 / sin 80 deg is 1.015 (derived).
const steepDeg = 80.0

// steeperHelps reports whether the angle of the legs has a say: not where they
// are steep as it is, and not where a part carries all, unless its rated load is
// lowered for their angle.
func (m *Mender) steeperHelps(a ask) bool {
	if !m.flatLegs(a) {
		return false
	}
	by, _ := a.subject.Field("judged_by")
	rated, known := a.number("rated_load_n")
	marked, given := a.number("marked_load_n")
	return by != "whole_load" || known && given && rated < marked
}

// flatLegs reports whether the leg that a part works in hangs under 80 deg; of a
// part in several legs or in none, whether any does. What is not known counts as flat.
func (m *Mender) flatLegs(a ask) bool {
	if m.facts == nil {
		return true
	}
	where, _ := a.subject.Field("where")
	any := false
	for _, l := range m.facts.Document.Legs {
		flat := l.AngleFromHorizontalDeg == nil || *l.AngleFromHorizontalDeg < steepDeg
		if l.ID == where {
			return flat
		}
		any = any || flat
	}
	return any
}

// ceilTo rounds up to a multiple of the step. What lies above one by less than
// rounding counts as that one.
func ceilTo(x, step float64) float64 { return math.Ceil(x/step-1e-9) * step }
