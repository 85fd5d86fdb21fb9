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
// tag's rating, which is stated for a body of statedBodyOverRope; nominalN is
// the nominal strength of its rope. Where that is known the rating is twice it
// times BendEfficiency over 5, where it is 0, not known, the tag's times the
// ratio of the efficiencies as used and as stated (derived: the lower of splice
// and bend governs, and the tag has counted the splice). It is never more than
// the tag's; with the strength known it may be less even where the tag was
// stated, by about 5 % for one that counts on a splice efficiency of 0.95.
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
	case usable(nominalN):
		return min(tagBasketN, basketParts*nominalN*used/ropeDesignFactor), nil
	case nominalN != 0:
		return 0, fmt.Errorf("a nominal strength of %g N is none", nominalN)
	case statedBodyOverRope == 0:
		return 0, errors.New("neither the strength of the rope is known nor the D/d that the tag's basket rating is stated for")
	}
	stated, err := BendEfficiency(statedBodyOverRope)
	if err != nil {
		return 0, fmt.Errorf("the tag's basket rating: %w", err)
	}
	return tagBasketN * min(used/stated, 1), nil
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
