package capacity

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// TestPublishedChainBridles: doubles, triples and quads follow from singles. Both
// are printed to a hundred pounds, each rounded by itself.
func TestPublishedChainBridles(t *testing.T) {
	for _, row := range published(t, "chain-bridles.csv") {
		single, want := value(t, row["single_leg_lb"]), value(t, row["rated_load_lb"])
		for _, n := range withFourth(int(value(t, row["legs"]))) {
			got, ok := BridleAssemblyRatedN(single, n, value(t, row["angle_from_horizontal_deg"]), ByAngle)
			if slack := value(t, row["rounding"]) / 2 * (1 + got/single); !ok || math.Abs(got-want) > slack+1e-9 {
				t.Errorf("%s in, %d legs at %s deg: %.0f, %t; published %.0f", row["size_in"], n, row["angle_from_horizontal_deg"], got, ok, want)
			}
		}
	}
}

// TestPublishedBands: the bridles of a table follow from its single slings.
// Both are printed as preferred numbers, each rounded by itself; how much a
// row needs for that beyond its last digits stands beside it, 3 % at most.
func TestPublishedBands(t *testing.T) {
	for _, row := range published(t, "en-13414-1-table-4.csv") {
		one, want := value(t, row["one_leg_t"]), value(t, row["rated_load_t"])
		legs, angle := int(value(t, row["legs"])), value(t, row["angle_from_horizontal_deg"])
		preferred := value(t, row["preferred_number_percent"])
		if preferred > 3 {
			t.Errorf("%s mm: %g %% is more than rounding", row["diameter_mm"], preferred)
		}
		for _, n := range withFourth(legs) {
			got, ok := BridleAssemblyRatedN(one, n, angle, ByBand)
			slack := halfDigit(row["rated_load_t"]) + halfDigit(row["one_leg_t"])*got/one + preferred/100*got
			if !ok || math.Abs(got-want) > slack+1e-9 {
				t.Errorf("%s mm, %d legs at %g deg: %.3f t, %t; published %g", row["diameter_mm"], n, angle, got, ok, want)
			}
		}
	}
}

// withFourth adds four legs to three: one column is for both.
func withFourth(legs int) []int {
	if legs == 3 {
		return []int{3, 4}
	}
	return []int{legs}
}

// halfDigit is half a unit of the last digit printed.
func halfDigit(printed string) float64 {
	_, decimals, _ := strings.Cut(printed, ".")
	return 0.5 * math.Pow(10, -float64(len(decimals)))
}

// TestOneLegOfABridle: at 60 deg from horizontal US tags stand for 1.732 and
// 2.598 legs, EN tags for 1.4 and 2.1 up to 45 deg from vertical.
func TestOneLegOfABridle(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct {
		legs     int
		angle    float64
		practice BridlePractice
		counts   float64
		ok       bool
	}{
		{1, 90, ByAngle, 1, true}, {1, 20, ByBand, 1, true}, {1, nan, ByAngle, 1, true},
		{2, 60, ByAngle, 1.7321, true}, {3, 60, ByAngle, 2.5981, true}, {4, 60, ByAngle, 2.5981, true},
		{2, 90, ByAngle, 2, true}, {4, 90, ByAngle, 3, true}, {2, 10, ByAngle, 0.3473, true},
		{2, 90, ByBand, 1.4, true}, {2, 45, ByBand, 1.4, true}, {2, 45 - 1e-9, ByBand, 1.4, true},
		{2, 44.99, ByBand, 1, true}, {2, 30, ByBand, 1, true},
		{3, 60, ByBand, 2.1, true}, {4, 45, ByBand, 2.1, true}, {3, 44.99, ByBand, 1.5, true}, {4, 30, ByBand, 1.5, true},
		{2, 29.99, ByBand, 0, false}, {4, 29.99, ByBand, 0, false},
		{2, 0, ByAngle, 0, false}, {2, -10, ByAngle, 0, false}, {2, 90.01, ByAngle, 0, false}, {2, nan, ByAngle, 0, false},
		{3, 0, ByBand, 0, false}, {3, 90.01, ByBand, 0, false}, {3, nan, ByBand, 0, false},
		{0, 60, ByAngle, 0, false}, {-1, 60, ByAngle, 0, false}, {5, 60, ByAngle, 0, false}, {5, 60, ByBand, 0, false},
		{1, 90, "", 0, false}, {2, 60, "", 0, false}, {2, 60, "by_hand", 0, false},
	} {
		leg, ok := BridleLegRatedN(1000, c.legs, c.angle, c.practice)
		if ok != c.ok || ok && math.Abs(1000/leg-c.counts) > 1e-4 || !ok && leg != 0 {
			t.Errorf("%d legs at %g deg %s: leg %g, %t; the tag stands for %g", c.legs, c.angle, c.practice, leg, ok, c.counts)
		}
		back, ok := BridleAssemblyRatedN(leg, c.legs, c.angle, c.practice)
		if ok != c.ok || ok && math.Abs(back-1000) > 1e-9 || !ok && back != 0 {
			t.Errorf("%d legs at %g deg %s: back to %g, %t", c.legs, c.angle, c.practice, back, ok)
		}
	}
	for _, none := range []float64{0, -1, nan, math.Inf(1)} {
		leg, legOK := BridleLegRatedN(none, 2, 60, ByAngle)
		all, allOK := BridleAssemblyRatedN(none, 2, 60, ByAngle)
		if legOK || allOK || leg != 0 || all != 0 {
			t.Errorf("a rating of %g passes: leg %g, assembly %g", none, leg, all)
		}
	}
}

// TestLegHoldsItsShare: a bridle at its tag, hung at any angle its tag allows,
// puts no more into a leg than the leg is rated for. That ties the ratings to
// the equilibrium of CountedShareN.
func TestLegHoldsItsShare(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		legs := rapid.IntRange(2, 4).Draw(t, "legs")
		p := rapid.SampledFrom([]BridlePractice{ByAngle, ByBand}).Draw(t, "practice")
		tag := rapid.Float64Range(30, 90).Draw(t, "tag's angle")
		least := tag
		if p == ByBand {
			least, _ = BandLeastFromHorizontalDeg(tag)
		}
		hung := rapid.Float64Range(least, 90).Draw(t, "hung at")
		leg, ok := BridleLegRatedN(1000, legs, tag, p)
		// EN cuts n cos 45 deg = 1.414 and 2.121 down to 1.4 and 2.1.
		if share := CountedShareN(1000, min(legs, 3), hung); !ok || share > leg*(1+1e-9) {
			t.Fatalf("share %g N, leg rated %g N, %t", share, leg, ok)
		}
	})
}

func TestBandLeast(t *testing.T) {
	for _, c := range []struct {
		tag, least float64
		ok         bool
	}{
		{90, 45, true}, {60, 45, true}, {45, 45, true}, {45 - 1e-9, 45, true},
		{44.99, 30, true}, {30, 30, true}, {30 - 1e-9, 30, true}, {90 + 1e-9, 45, true},
		{29.99, 0, false}, {0, 0, false}, {-45, 0, false}, {90.01, 0, false}, {math.NaN(), 0, false}, {math.Inf(1), 0, false},
	} {
		if got, ok := BandLeastFromHorizontalDeg(c.tag); got != c.least || ok != c.ok {
			t.Errorf("tag at %g deg: %g, %t; not %g, %t", c.tag, got, ok, c.least, c.ok)
		}
	}
}
