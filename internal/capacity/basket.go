package capacity

import (
	"errors"
	"fmt"
)

// basketParts is how many parts of a single basket hold the load, so that it
// carries at most twice what one part may (statics).
const basketParts = 2

// BasketRatedN is what a basket is rated for as it is used, in newtons, both
// parts vertical, round a body so many rope diameters wide. tagBasketN is its
// tag's rating, which is stated for a body of statedBodyOverRope (see
// StatedBendD) and holds in full on that and on all wider ones; nominalN is the
// nominal strength of its rope. 0 stands for either that is not known. On a
// narrower body, and where it is not known what the tag is stated for, the
// rating is twice the strength times BendEfficiency over 5, and without the
// strength the tag's times the ratio of the efficiencies as used and as stated
// (derived: the lower of splice and bend governs, and the tag has counted the
// splice). It is never more than the tag's. Just under the stated D/d it may
// fall by about 5 %, for a tag that counts on a splice efficiency of 0.95.
//
// It is an error if the tag has no rating, if a body is narrower than the rope,
// if nominalN is below zero or no number, and if neither it nor
// statedBodyOverRope is known.
func BasketRatedN(tagBasketN, nominalN, bodyOverRope, statedBodyOverRope float64) (float64, error) {
	used, err := BendEfficiency(bodyOverRope)
	switch {
	case err != nil:
		return 0, err
	case !usable(tagBasketN):
		return 0, fmt.Errorf("a basket rating of %g N is none", tagBasketN)
	case nominalN != 0 && !usable(nominalN):
		return 0, fmt.Errorf("a nominal strength of %g N is none", nominalN)
	case statedBodyOverRope == 0 && nominalN == 0:
		return 0, errors.New("neither the strength of the rope is known nor the D/d that the tag's basket rating is stated for")
	case statedBodyOverRope == 0:
		return bentBasketN(tagBasketN, nominalN, used), nil
	}
	stated, err := BendEfficiency(statedBodyOverRope)
	switch {
	case err != nil:
		return 0, fmt.Errorf("the tag's basket rating: %w", err)
	case bodyOverRope >= statedBodyOverRope*(1-sameSize):
		return tagBasketN, nil
	case nominalN == 0:
		return tagBasketN * min(used/stated, 1), nil
	}
	return bentBasketN(tagBasketN, nominalN, used), nil
}

// bentBasketN is what the bend leaves of two parts, and no more than the tag.
func bentBasketN(tagBasketN, nominalN, efficiency float64) float64 {
	return min(tagBasketN, basketParts*nominalN*efficiency/ropeDesignFactor)
}

// InclinedRatedN is what a choker or a basket lifts, in newtons, that is rated
// for ratedN straight up, its parts inclined by an angle from horizontal: rated
// load times sin b, which is height over length, H/L (statics). Both parts of a
// basket are at that angle. It is an error unless the angle lies over 0 and up
// to 90 deg and the rating is one.
func InclinedRatedN(ratedN, angleFromHorizontalDeg float64) (float64, error) {
	switch {
	case !usable(ratedN):
		return 0, fmt.Errorf("a rating of %g N is none", ratedN)
	case !(angleFromHorizontalDeg > 0 && angleFromHorizontalDeg <= 90+angleSlackDeg):
		return 0, fmt.Errorf("a sling is inclined by over 0 to 90 deg from horizontal, not by %g", angleFromHorizontalDeg)
	}
	return ratedN * sinDeg(angleFromHorizontalDeg), nil
}
