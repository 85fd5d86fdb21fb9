package capacity

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestGrommetFromBreakingLoad: a part has half of what is for two, so that the
// same figure taken for one part would double the rating.
func TestGrommetFromBreakingLoad(t *testing.T) {
	for _, c := range []struct {
		breakingN             float64
		isForParts            int
		partN, ratedN, onePtN float64
		ok                    bool
	}{
		{1000e3, 2, 500e3, 200e3, 100e3, true},
		{1000e3, 1, 1000e3, 400e3, 200e3, true},
		{1000e3, 0, 0, 0, 0, false},
		{1000e3, 4, 0, 0, 0, false},
		{1000e3, -1, 0, 0, 0, false},
		{0, 2, 0, 0, 0, false},
		{-1, 2, 0, 0, 0, false},
		{math.NaN(), 2, 0, 0, 0, false},
		{math.Inf(1), 1, 0, 0, 0, false},
	} {
		part, okPart := GrommetPartStrengthN(c.breakingN, c.isForParts)
		rated, okRated := GrommetRatedN(c.breakingN, c.isForParts)
		one, okOne := GrommetPartRatedN(c.breakingN, c.isForParts)
		if part != c.partN || rated != c.ratedN || one != c.onePtN || okPart != c.ok || okRated != c.ok || okOne != c.ok {
			t.Errorf("%+v: part %g N, rated %g N, one part %g N, %t", c, part, rated, one, okPart)
		}
	}
	if got, ok := CableLaidRatedN(1000e3); !ok || got != 200e3 {
		t.Errorf("cable-laid: %g N, %t", got, ok)
	}
	if got, ok := CableLaidRatedN(0); ok || got != 0 {
		t.Errorf("cable-laid without a breaking load: %g N", got)
	}
}

// TestPublishedEndless: endless slings of EN 13414-1:2003 Table 4 in a choke are
// 1.6 of one leg, both rounded to preferred numbers; how much a row needs for that
// beyond its last digits stands beside it.
func TestPublishedEndless(t *testing.T) {
	for _, row := range published(t, "en-13414-1-endless.csv") {
		one, want, preferred := value(t, row["one_leg_t"]), value(t, row["rated_load_t"]), value(t, row["preferred_number_percent"])
		got, ok := EndlessChokeRatedN(one)
		slack := halfDigit(row["rated_load_t"]) + halfDigit(row["one_leg_t"])*endlessChokeFactor + preferred/100*got
		if !ok || preferred > 3 || math.Abs(got-want) > slack+1e-9 {
			t.Errorf("%s mm: %.3f t, %t; published %g", row["diameter_mm"], got, ok, want)
		}
		// By another way, from the rope itself.
		r := Rope{Class: "6x19", Core: "iwrc", Grade: "1770", DiameterM: value(t, row["diameter_mm"]) / 1000}
		leg, okLeg := BelievableRatedN(r, TurnBackSleeve, TurnBackSleeve, ByBand)
		choke, okChoke := EndlessChokeRatedN(leg / tonneN)
		if !okLeg || !okChoke || math.Abs(want-choke) > 0.03*choke {
			t.Errorf("%s mm: %.3f t by its rope, published %g", row["diameter_mm"], choke, want)
		}
		// And never over what a grommet of that rope is bounded by.
		if most, known := StrongestGrommetRatedN(r, ByBand); !known || want*tonneN > most {
			t.Errorf("%s mm: published %g t, a grommet can have %g at most", row["diameter_mm"], want, most/tonneN)
		}
	}
	for _, none := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if got, ok := EndlessChokeRatedN(none); ok || got != 0 {
			t.Errorf("one leg rated %g: %g", none, got)
		}
	}
}

// TestStrongestGrommet is two ropes, spliced or not.
func TestStrongestGrommet(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := drawRope(t)
		p := rapid.SampledFrom([]BridlePractice{ByAngle, ByBand}).Draw(t, "practice")
		most, ok := StrongestGrommetRatedN(r, p)
		leg, okLeg := StrongestRatedN(r, "", "", p)
		if !ok || !okLeg || most < 2*leg {
			t.Fatalf("%+v: %g N, %t; one leg %g N, %t", r, most, ok, leg, okLeg)
		}
	})
	if got, ok := StrongestGrommetRatedN(Rope{DiameterM: inchM}, ""); ok || got != 0 {
		t.Errorf("no practice: %g N", got)
	}
	if got, ok := StrongestGrommetRatedN(Rope{}, ByAngle); ok || got != 0 {
		t.Errorf("no diameter: %g N", got)
	}
}

// TestStrongestGrommetBreaking: K of 0.359 at 2160 N/mm2 (EN 12385-4, practice), or by
// US tables up to 3 % more, on a body of 20 mm, once and twice; solid steel would hold more than twice as much, and a
// grommet of 1770 rope, whose parts keep nine tenths of it, holds less.
func TestStrongestGrommetBreaking(t *testing.T) {
	one, _ := StrongestGrommetBreakingN(0.020, 1)
	both, ok := StrongestGrommetBreakingN(0.020, 2)
	if byFactor := 0.359 * 2160 * 400; !ok || one < byFactor || one > 1.03*byFactor || both != 2*one {
		t.Errorf("%.0f and %.0f N", one, both)
	}
	if solid := math.Pi / 4 * 400 * 2160; solid < 2*one || solid > 2.2*one {
		t.Errorf("solid steel holds %.2f as much", solid/one)
	}
	usual := 2 * 0.9 * 0.356 * 1770 * 400
	if ratio := usual / both; ratio > 0.9 || 10*ratio < BelievableBreakingRatio {
		t.Errorf("a usual grommet holds %.2f of the strongest", ratio)
	}
	for _, parts := range []int{0, 3} {
		if _, ok := StrongestGrommetBreakingN(0.020, parts); ok {
			t.Errorf("%d parts", parts)
		}
	}
	if _, ok := StrongestGrommetBreakingN(0, 2); ok {
		t.Error("no body")
	}
}
