package capacity

import (
	"math"
	"testing"
)

// TestPartShares: a marine lifting guideline (read) counts 0.55 of the whole in
// a part of a grommet used straight, 0.55 x 0.55 doubled, and 67.5 % beside
// 32.5 while a sling slides in upending.
func TestPartShares(t *testing.T) {
	for _, c := range []struct {
		parts    int
		practice PartPractice
		share    float64
	}{
		{1, EqualParts, 1}, {2, EqualParts, 0.5}, {3, EqualParts, 1. / 3}, {4, EqualParts, 0.25}, {8, EqualParts, 0.125},
		{1, UnevenParts, 1}, {2, UnevenParts, 0.55}, {4, UnevenParts, 0.3025},
		{1, SlidingParts, 1}, {2, SlidingParts, 0.675},
	} {
		if got, err := PartShares(c.parts, c.practice); err != nil || math.Abs(got-c.share) > 1e-12 {
			t.Errorf("%d parts, %s: %g, %v; not %g", c.parts, c.practice, got, err, c.share)
		}
	}
	for _, c := range []struct {
		parts    int
		practice PartPractice
	}{
		{0, EqualParts}, {-2, EqualParts}, {0, UnevenParts}, {3, UnevenParts}, {8, UnevenParts},
		{4, SlidingParts}, {0, SlidingParts}, {1, ""}, {2, ""}, {2, "odd"}, {1, "odd"},
	} {
		if got, err := PartShares(c.parts, c.practice); err == nil || got != 0 {
			t.Errorf("%d parts, %q: %g", c.parts, c.practice, got)
		}
	}
}

// TestNoPartHoldsLessThanItsMean: whatever the practice, the most loaded part
// holds no less than an equal share and no more than all, and more parts never
// mean more in one.
func TestNoPartHoldsLessThanItsMean(t *testing.T) {
	for _, p := range []PartPractice{EqualParts, UnevenParts, SlidingParts} {
		last, told := 1.0, 0
		for parts := 1; parts <= 8; parts++ {
			share, err := PartShares(parts, p)
			if err != nil {
				continue
			}
			told++
			if share < 1/float64(parts) || share > last {
				t.Errorf("%d parts, %s: %g, after %g", parts, p, share, last)
			}
			last = share
		}
		if told < 2 {
			t.Errorf("%s tells of %d numbers of parts", p, told)
		}
	}
}
