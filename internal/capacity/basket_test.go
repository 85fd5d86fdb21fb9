package capacity

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestBasketRated: rope of 100 kN nominal strength, its tag stated for D/d 25.
func TestBasketRated(t *testing.T) {
	for name, c := range map[string]struct{ tag, nominal, used, stated, ratedN float64 }{
		"as stated":                    {36e3, 100e3, 25, 25, 36e3},
		"wider":                        {36e3, 100e3, 100, 25, 36e3},
		"narrower":                     {36e3, 100e3, 4, 25, 30e3},
		"one rope diameter":            {36e3, 100e3, 1, 25, 20e3}, // a fifth of one rope
		"tag lower than the bend":      {25e3, 100e3, 4, 25, 25e3},
		"by splice, as stated":         {38e3, 100e3, 25, 25, 38e3}, // splice efficiency 0.95, bend 0.9
		"by splice, a rounding under":  {38e3, 100e3, 25 * (1 - 1e-12), 25, 38e3},
		"by splice, just narrower":     {38e3, 100e3, 24.9, 25, 40e3 * (1 - 0.5/math.Sqrt(24.9))},
		"by splice, stated unknown":    {38e3, 100e3, 25, 0, 36e3},
		"hand-tucked, as stated":       {32e3, 100e3, 15, 15, 32e3},
		"stated unknown":               {36e3, 100e3, 4, 0, 30e3},
		"strength unknown, as stated":  {36e3, 0, 25, 25, 36e3},
		"strength unknown, wider":      {36e3, 0, 100, 25, 36e3},
		"strength unknown, narrower":   {36e3, 0, 4, 25, 30e3},
		"strength unknown, one rope d": {36e3, 0, 1, 25, 20e3},
		"strength unknown, grommet":    {36e3, 0, 4, 6.25, 33.75e3},
	} {
		got, err := BasketRatedN(c.tag, c.nominal, c.used, c.stated)
		if err != nil || math.Abs(got-c.ratedN) > 1e-9*c.ratedN {
			t.Errorf("%s: %g N, %v; not %g", name, got, err, c.ratedN)
		}
	}
	nan, inf := math.NaN(), math.Inf(1)
	for name, c := range map[string][4]float64{
		"no tag":                    {0, 100e3, 25, 25},
		"tag below zero":            {-1, 100e3, 25, 25},
		"tag is no number":          {nan, 100e3, 25, 25},
		"tag without end":           {inf, 100e3, 25, 25},
		"strength below zero":       {36e3, -1, 25, 25},
		"strength is no number":     {36e3, nan, 25, 25},
		"strength without end":      {36e3, inf, 25, 25},
		"body narrower than rope":   {36e3, 100e3, 0.9, 25},
		"the same, no strength":     {36e3, 0, 0.9, 25},
		"body is no number":         {36e3, 100e3, nan, 25},
		"nothing known":             {36e3, 0, 25, 0},
		"stated narrower than rope": {36e3, 0, 25, 0.5},
		"stated is no number":       {36e3, 0, 25, nan},
		"stated below zero":         {36e3, 0, 25, -25},
		"the same, strength known":  {36e3, 100e3, 25, -25},
		"stated no number either":   {36e3, 100e3, 25, nan},
	} {
		if got, err := BasketRatedN(c[0], c[1], c[2], c[3]); err == nil || got != 0 {
			t.Errorf("%s: %g N", name, got)
		}
	}
}

// TestBasketIsNeverRatedOverItsTag, nor over what a narrower body or a stronger
// rope would let it be rated for.
func TestBasketIsNeverRatedOverItsTag(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tag := rapid.Float64Range(1e3, 1e6).Draw(t, "tag")
		nominal := rapid.SampledFrom([]float64{0, 1}).Draw(t, "known") * rapid.Float64Range(1e3, 5e6).Draw(t, "nominal")
		stated := rapid.Float64Range(1, 40).Draw(t, "stated")
		narrow := rapid.Float64Range(1, 60).Draw(t, "narrow")
		wide := rapid.Float64Range(narrow, 60).Draw(t, "wide")
		a, errA := BasketRatedN(tag, nominal, narrow, stated)
		b, errB := BasketRatedN(tag, nominal, wide, stated)
		if errA != nil || errB != nil || !(a > 0 && a <= b && b <= tag) {
			t.Fatalf("D/d %g: %g N, %v; %g: %g N, %v", narrow, a, errA, wide, b, errB)
		}
		if nominal == 0 {
			return
		}
		if c, err := BasketRatedN(tag, 1.1*nominal, narrow, stated); err != nil || c < a {
			t.Fatalf("stronger rope: %g N, %v, not %g", c, err, a)
		}
		if parts := 2 * nominal / ropeDesignFactor; narrow < 0.999*stated && a > parts {
			t.Fatalf("%g N with two parts of %g N", a, parts)
		}
		if at, err := BasketRatedN(tag, nominal, max(wide, stated), stated); err != nil || at != tag {
			t.Fatalf("at or over the stated D/d %g: %g N, %v, not the tag's %g", stated, at, err, tag)
		}
	})
}

// TestPublishedChoker: height over length is the sine of the angle from
// horizontal.
func TestPublishedChoker(t *testing.T) {
	for _, row := range published(t, "choker-ratings.csv") {
		steepness := degrees(math.Asin(value(t, row["height_in"]) / value(t, row["length_in"])))
		got, err := InclinedRatedN(value(t, row["rated_lb"]), steepness)
		if want := value(t, row["inclined_lb"]); err != nil || math.Abs(got-want) > value(t, row["rounding_lb"])/2 {
			t.Errorf("case %s: %g lb, %v; published %g", row["case"], got, err, want)
		}
	}
}

// TestBasketHasTwoParts: a basket rated for twice what one part may carry puts
// just that into each of its parts at every angle. One Navy page prints 4 for
// an inclined single basket, which would put twice as much into them.
func TestBasketHasTwoParts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		part := rapid.Float64Range(1e3, 1e6).Draw(t, "one part")
		steepness := rapid.Float64Range(1, 90).Draw(t, "from horizontal")
		lifts, err := InclinedRatedN(2*part, steepness)
		if got := CountedShareN(lifts, 2, steepness); err != nil || math.Abs(got-part) > 1e-9*part {
			t.Fatalf("%g N in a part, %v; not %g", got, err, part)
		}
		if lifts > 2*part {
			t.Fatalf("%g N inclined, %g straight", lifts, 2*part)
		}
		trap, err := InclinedRatedN(4*part, steepness)
		if got := CountedShareN(trap, 2, steepness); err != nil || got < 1.99*part {
			t.Fatalf("four parts leave %g N in each of two, %v", got, err)
		}
	})
	// Round a body that does not bend it at all, two parts hold twice one rope.
	if got, err := BasketRatedN(1e6, 100e3, math.Inf(1), 0); err != nil || got != 2*100e3/5 {
		t.Errorf("two parts: %g N, %v", got, err)
	}
}

func TestInclinedRated(t *testing.T) {
	for _, c := range []struct{ steepness, ratedN float64 }{
		{90, 1000}, {90 + 1e-9, 1000}, {60, 500 * math.Sqrt(3)}, {45, 500 * math.Sqrt2}, {30, 500},
	} {
		if got, err := InclinedRatedN(1000, c.steepness); err != nil || math.Abs(got-c.ratedN) > 1e-9 || got > 1000 {
			t.Errorf("%g deg: %g N, %v; not %g", c.steepness, got, err, c.ratedN)
		}
	}
	for _, steepness := range []float64{0, -30, 90.01, 150, math.NaN(), math.Inf(1)} {
		if got, err := InclinedRatedN(1000, steepness); err == nil || got != 0 {
			t.Errorf("%g deg: %g N", steepness, got)
		}
	}
	for _, rated := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if got, err := InclinedRatedN(rated, 60); err == nil || got != 0 {
			t.Errorf("rated %g N: %g N", rated, got)
		}
	}
}
