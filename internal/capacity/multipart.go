package capacity

import "math"

// multiPartEfficiency is what braiding and splicing leave of the strength of
// the parts of a multi-part sling (ASME B30.9, read in a reprint).
const multiPartEfficiency = 0.70

// MultiPartRatedN is what a multi-part sling of one straight leg can be rated
// for, in newtons: the nominal strength of its component rope times its parts
// times 0.70, over 5 (ASME B30.9, read in a reprint), with the limits of
// BelievableRatedN. ok is false where the strength is not known and for less
// than two parts.
func MultiPartRatedN(component Rope, parts int, p BridlePractice) (ratedN float64, ok bool) {
	return multiPartN(component, parts, p, NominalStrengthN)
}

// StrongestMultiPartRatedN is MultiPartRatedN with all that is not known of the
// component taken at its strongest, as StrongestRatedN does.
func StrongestMultiPartRatedN(component Rope, parts int, p BridlePractice) (ratedN float64, ok bool) {
	return multiPartN(component, parts, p, StrongestNominalN)
}

// MultiPartChokerRatedN is what a multi-part sling can be rated for in a choke,
// in newtons: MultiPartRatedN times choker over vertical, which tags count at
// 0.70 to 0.80 (common practice). In a choke of a single-part sling splices play
// no part, but here the 0.70 stays (ASME B30.9, read in a reprint). ok is false
// too for a share that is not over 0 and up to 1.
func MultiPartChokerRatedN(component Rope, parts int, chokerOverVertical float64, p BridlePractice) (ratedN float64, ok bool) {
	straight, ok := MultiPartRatedN(component, parts, p)
	if !ok || !(chokerOverVertical > 0 && chokerOverVertical <= 1) {
		return 0, false
	}
	return straight * chokerOverVertical, true
}

func multiPartN(component Rope, parts int, p BridlePractice, nominal func(Rope) (float64, bool)) (float64, bool) {
	if parts < 2 || p != ByAngle && p != ByBand {
		return 0, false
	}
	strength, ok := countedStrengthN(component, p, nominal)
	if !ok {
		return 0, false
	}
	return strength * float64(parts) * multiPartEfficiency / ropeDesignFactor, true
}

// braidTolerance is how far the body of a braided sling may lie from what its
// components make of it: braids are no perfect circles, and are measured loose or
// drawn tight. The figure is this project's own choice; taking one of 7 parts for
// one of 9 is a difference of 20 %.
const braidTolerance = 0.15

// BraidBodyM is the diameter of the finished body of a multi-part sling in
// meters, from that of its component: the circle round six or eight ropes that
// lie side by side on a core, c (1 + 1/sin(180 deg / n)), 3.0 c for 7 parts
// and 3.6 c for 9 (derived). ok is false for other numbers of parts, whose
// lay-up is not known, and for a diameter that is none.
func BraidBodyM(componentM float64, parts int) (bodyM float64, ok bool) {
	round := parts - 1
	if parts != 7 && parts != 9 || !usable(componentM) {
		return 0, false
	}
	return componentM * (1 + 1/math.Sin(math.Pi/float64(round))), true
}

// BraidBodyAgrees tells whether the two diameters given for a multi-part sling
// can both be right: within 15 % of BraidBodyM. ok is false where that is not
// known.
func BraidBodyAgrees(bodyM, componentM float64, parts int) (agrees, ok bool) {
	expected, ok := BraidBodyM(componentM, parts)
	if !ok || !usable(bodyM) {
		return false, false
	}
	return math.Abs(bodyM-expected) <= braidTolerance*expected*(1+sameSize), true
}

// CableLaidBodyAgrees tells the same of the body and the rope of a cable-laid sling
// or grommet, six ropes round one of their thickness: the body is three ropes thick
// (geometry), to 15 %. ok is false for a diameter that is none.
func CableLaidBodyAgrees(bodyM, componentM float64) (agrees, ok bool) {
	return BraidBodyAgrees(bodyM, componentM, cableRopes)
}
