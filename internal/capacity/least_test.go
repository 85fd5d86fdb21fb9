package capacity

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestLeastClearRope: 29 CFR 1910.184(f)(2) asks for 10 diameters, and for 40
// components of a braided sling (read in a state's text); EN 13414-1 for 20
// between sleeves, 15 between splices (from memory).
func TestLeastClearRope(t *testing.T) {
	const body, component = 0.06, 0.02
	for _, c := range []struct {
		make         Make
		upper, lower Termination
		practice     BridlePractice
		lengthM      float64
		ok           bool
	}{
		{SinglePart, FlemishSleeve, FlemishSleeve, ByAngle, 0.60, true},
		{SinglePart, HandTucked, HandTucked, ByAngle, 0.60, true},
		{SinglePart, "", "", ByAngle, 0.60, true},
		{SinglePart, TurnBackSleeve, TurnBackSleeve, ByBand, 1.20, true},
		{SinglePart, HandTucked, HiddenTuck, ByBand, 0.90, true},
		{SinglePart, HandTucked, FlemishSleeve, ByBand, 1.20, true},
		{SinglePart, HandTucked, "", ByBand, 1.20, true},
		{SinglePart, Socket, Socket, ByBand, 1.20, true},
		{MultiPart, FlemishSleeve, FlemishSleeve, ByAngle, 0.80, true},
		{MultiPart, HandTucked, HandTucked, ByBand, 0.80, true},
		{CableLaid, FlemishSleeve, FlemishSleeve, ByAngle, 0.60, true}, // not 10 components, 0.20
		{CableLaid, HandTucked, HandTucked, ByBand, 0.60, true},
		{StrandLaidGrommet, "", "", ByAngle, 0, false},
		{CableLaidGrommet, "", "", ByBand, 0, false},
		{"", FlemishSleeve, FlemishSleeve, ByAngle, 0, false},
		{SinglePart, FlemishSleeve, FlemishSleeve, "", 0, false},
	} {
		got, ok := LeastClearRopeM(c.make, c.upper, c.lower, body, component, c.practice)
		if math.Abs(got-c.lengthM) > 1e-12 || ok != c.ok {
			t.Errorf("%+v: %g m, %t", c, got, ok)
		}
	}
	for _, none := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		single, okSingle := LeastClearRopeM(SinglePart, HandTucked, HandTucked, none, component, ByBand)
		braided, okBraided := LeastClearRopeM(MultiPart, "", "", body, none, ByAngle)
		if okSingle || okBraided || single != 0 || braided != 0 {
			t.Errorf("a diameter of %g m asks for %g and %g m", none, single, braided)
		}
	}
}

// TestOtherLeastLengths, worked by hand from 96 d (29 CFR 1910.184(f)(2), read in
// a state's text), 3 sleeves and 4 lays (EN 13414-1, read in a reprint).
func TestOtherLeastLengths(t *testing.T) {
	for name, c := range map[string]struct {
		least      func(float64) (float64, bool)
		of, length float64
	}{
		"circumference of a 25 mm grommet":  {LeastCircumferenceM, 0.025, 2.4},
		"endless with a sleeve of 80 mm":    {LeastEndlessClearM, 0.08, 0.24},
		"eye of rope with a lay of 130 mm":  {LeastEyePeripheryM, 0.13, 0.52},
		"circumference of a 1 in endless":   {LeastCircumferenceM, inchM, 8 * 12 * inchM},
		"eye of a rope with a lay of 6.5 d": {LeastEyePeripheryM, 6.5 * 0.02, 0.52},
	} {
		if got, ok := c.least(c.of); !ok || math.Abs(got-c.length) > 1e-12 {
			t.Errorf("%s: %g m, %t", name, got, ok)
		}
		for _, none := range []float64{0, -1, math.NaN(), math.Inf(1)} {
			if got, ok := c.least(none); ok || got != 0 {
				t.Errorf("%s: %g gives %g m", name, none, got)
			}
		}
	}
	if least, most := LayRangeD(); !(least < 6.5 && 6.5 < most) {
		t.Errorf("a lay of 6.5 diameters, which is usual, lies outside %g to %g", least, most)
	}
}

// TestUnknownEndAsksForNoLess: what is not known of the ends never shortens the
// rope that is asked for, and thicker rope never asks for less.
func TestUnknownEndAsksForNoLess(t *testing.T) {
	ends := []Termination{FlemishSleeve, TurnBackSleeve, HandTucked, HiddenTuck, Socket}
	rapid.Check(t, func(t *rapid.T) {
		m := rapid.SampledFrom([]Make{SinglePart, MultiPart, CableLaid}).Draw(t, "make")
		p := rapid.SampledFrom([]BridlePractice{ByAngle, ByBand}).Draw(t, "practice")
		upper, lower := rapid.SampledFrom(ends).Draw(t, "upper"), rapid.SampledFrom(ends).Draw(t, "lower")
		thin := rapid.Float64Range(0.008, 0.1).Draw(t, "diameter")
		thick := rapid.Float64Range(thin, 0.1).Draw(t, "thicker")
		told, okTold := LeastClearRopeM(m, upper, lower, thin, thin, p)
		open, okOpen := LeastClearRopeM(m, upper, "", thin, thin, p)
		more, okMore := LeastClearRopeM(m, upper, lower, thick, thick, p)
		if !okTold || !okOpen || !okMore || open < told || more < told {
			t.Fatalf("%g m, %t; end not known %g m, %t; thicker %g m, %t", told, okTold, open, okOpen, more, okMore)
		}
	})
}
