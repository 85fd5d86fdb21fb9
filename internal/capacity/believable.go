package capacity

// ropeDesignFactor is strength over rated load of a wire rope sling (ASME
// B30.9; MIL-DTL-3903F note 1, read; Zp of EN 13414-1, read in a reprint).
const ropeDesignFactor = 5

// galvanizedFactor is what galvanizing leaves of a rating by US practice
// (MIL-DTL-3903F, read). EN 13414-1 makes no such difference.
const galvanizedFactor = 0.9

// bandGrade is the highest grade that EN 13414-1 lets a sling count on (read
// in a reprint).
const bandGrade = "1770"

// BelievableRatedN is what a sling of one straight leg can be rated for, in
// newtons: nominal strength times the lower efficiency of its two ends, over
// 5, and by angle 10 % less if galvanized. By band no grade counts for more than 1770
// N/mm2. Tables that are rounded lie up to 2.5 % over it (MIL-DTL-3903F Table
// II, EN 13414-1 Table 4, read). It serves to ask whether a tag can be right;
// the tag prevails over it. ok is false where strength or an efficiency is not
// known.
func BelievableRatedN(r Rope, upper, lower Termination, p BridlePractice) (ratedN float64, ok bool) {
	strength, ok := countedStrengthN(r, p, NominalStrengthN)
	u, upperKnown := SpliceEfficiency(upper, r.Core, r.DiameterM, p)
	l, lowerKnown := SpliceEfficiency(lower, r.Core, r.DiameterM, p)
	if !ok || !upperKnown || !lowerKnown {
		return 0, false
	}
	return strength * min(u, l) / ropeDesignFactor, true
}

// StrongestRatedN is BelievableRatedN, in newtons, with all that is not known
// taken at its strongest: no sling of which that much is true can be rated
// higher, but for the rounding of tables. An end that is not known is taken to
// be an eye. ok is false only for a diameter that is none and a practice that
// is not known.
func StrongestRatedN(r Rope, upper, lower Termination, p BridlePractice) (ratedN float64, ok bool) {
	strength, ok := countedStrengthN(r, p, StrongestNominalN)
	u, upperKnown := efficiencyOrBest(upper, r, p)
	l, lowerKnown := efficiencyOrBest(lower, r, p)
	if !ok || !upperKnown || !lowerKnown {
		return 0, false
	}
	return strength * min(u, l) / ropeDesignFactor, true
}

func efficiencyOrBest(t Termination, r Rope, p BridlePractice) (float64, bool) {
	if e, ok := SpliceEfficiency(t, r.Core, r.DiameterM, p); ok {
		return e, true
	}
	return BestSpliceEfficiency(r.Core, r.DiameterM, p)
}

// countedStrengthN is the strength that a rating may count on.
func countedStrengthN(r Rope, p BridlePractice, nominal func(Rope) (float64, bool)) (float64, bool) {
	strength, ok := nominal(r)
	if p == ByBand {
		limit := r
		limit.Grade = bandGrade
		most, known := nominal(limit)
		strength, ok = min(strength, most), ok && known
	}
	if r.Galvanized && p == ByAngle {
		strength *= galvanizedFactor
	}
	return strength, ok
}
