package capacity

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestMultiPartRated: parts times the component's nominal strength times 0.70,
// over 5 (ASME B30.9, read in a reprint), with the strength of 3/8 in rope from
// a public engineering reference, 12,200 lb.
func TestMultiPartRated(t *testing.T) {
	component := Rope{Class: "6x19", Core: "fiber", Grade: "ips", DiameterM: 3 * eighthM}
	for _, c := range []struct {
		parts           int
		straight, choke float64 // lb
	}{
		{2, 3416, 2562}, {7, 11_956, 8967}, {9, 15_372, 11_529}, // worked by hand
	} {
		got, ok := MultiPartRatedN(component, c.parts, ByAngle)
		strongest, okStrongest := StrongestMultiPartRatedN(component, c.parts, ByAngle)
		choke, okChoke := MultiPartChokerRatedN(component, c.parts, 0.75, ByAngle)
		if !ok || !okStrongest || !okChoke || math.Abs(got/poundN-c.straight) > 1e-6 || strongest != got || math.Abs(choke/poundN-c.choke) > 1e-6 {
			t.Errorf("%d parts: %.1f and in a choke %.1f lb", c.parts, got/poundN, choke/poundN)
		}
	}
	galvanized, unknown := component, component
	galvanized.Galvanized, unknown.Grade = true, ""
	if got, ok := MultiPartRatedN(galvanized, 7, ByAngle); !ok || math.Abs(got/poundN-10_760.4) > 1e-6 {
		t.Errorf("galvanized: %.1f lb, %t", got/poundN, ok)
	}
	if got, ok := MultiPartRatedN(unknown, 7, ByAngle); ok || got != 0 {
		t.Errorf("no grade: %g N", got)
	}
	if got, ok := StrongestMultiPartRatedN(unknown, 7, ByAngle); !ok || got < 11_956*poundN {
		t.Errorf("no grade at its strongest: %g N, %t", got, ok)
	}
}

func TestUnknownMultiPart(t *testing.T) {
	component := Rope{Class: "6x19", Core: "iwrc", Grade: "1770", DiameterM: 0.01}
	for _, c := range []struct {
		parts    int
		choker   float64
		practice BridlePractice
	}{
		{1, 0.75, ByAngle}, {0, 0.75, ByAngle}, {-7, 0.75, ByAngle}, {7, 0.75, ""},
		{7, 0, ByAngle}, {7, -0.75, ByAngle}, {7, 1.01, ByAngle}, {7, math.NaN(), ByAngle},
	} {
		if got, ok := MultiPartChokerRatedN(component, c.parts, c.choker, c.practice); ok || got != 0 {
			t.Errorf("%+v: %g N", c, got)
		}
	}
}

// TestMultiPartIsNeverRatedOverItsParts: a braid holds less than its ropes side by
// side, more parts hold more, and what is not known never lowers the bound.
func TestMultiPartIsNeverRatedOverItsParts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := drawRope(t)
		parts := rapid.IntRange(2, 12).Draw(t, "parts")
		p := rapid.SampledFrom([]BridlePractice{ByAngle, ByBand}).Draw(t, "practice")
		strongest, ok := StrongestMultiPartRatedN(r, parts, p)
		one, okOne := StrongestNominalN(r)
		if !ok || !okOne || strongest > float64(parts)*one/ropeDesignFactor {
			t.Fatalf("%+v: %g N, %t", r, strongest, ok)
		}
		exact, known := MultiPartRatedN(r, parts, p)
		more, _ := MultiPartRatedN(r, parts+1, p)
		choke, okChoke := MultiPartChokerRatedN(r, parts, 0.8, p)
		if exact > strongest*(1+1e-12) || known && !(more > exact) || okChoke != known || choke > exact {
			t.Fatalf("%+v, %d parts: %g N, at its strongest %g, one part more %g, in a choke %g", r, parts, exact, strongest, more, choke)
		}
	})
}

// TestBraidBody: 3.0 c for six ropes on one, 3.6 c for eight (circles side by
// side; derived).
func TestBraidBody(t *testing.T) {
	for _, c := range []struct {
		parts int
		ratio float64
		ok    bool
	}{{7, 3.0, true}, {9, 3.6, true}, {6, 0, false}, {8, 0, false}, {1, 0, false}, {0, 0, false}} {
		if got, ok := BraidBodyM(0.02, c.parts); math.Abs(got/0.02-c.ratio) > 0.02 || ok != c.ok {
			t.Errorf("%d parts: %.3f c, %t; not %g", c.parts, got/0.02, ok, c.ratio)
		}
	}
	// The ropes of the ring touch their neighbors: drawn anew from their centers.
	for _, parts := range []int{7, 9} {
		body, _ := BraidBodyM(1, parts)
		step := 2 * math.Pi / float64(parts-1)
		x, y := (body-1)/2*(math.Cos(step)-1), (body-1)/2*math.Sin(step)
		if apart := math.Hypot(x, y); math.Abs(apart-1) > 1e-12 {
			t.Errorf("%d parts: neighbors are %g c apart", parts, apart)
		}
	}
	for _, c := range []struct {
		body, component float64
		parts           int
		agrees, ok      bool
	}{
		{0.060, 0.02, 7, true, true}, {0.069, 0.02, 7, true, true}, {0.0691, 0.02, 7, false, true},
		{0.051, 0.02, 7, true, true}, {0.0509, 0.02, 7, false, true},
		{0.060, 0.02, 9, false, true}, {0.072, 0.02, 9, true, true}, {0.072, 0.02, 7, false, true},
		{0.02, 0.02, 7, false, true}, // the component given twice
		{0.06, 0.02, 8, false, false}, {0, 0.02, 7, false, false}, {0.06, 0, 7, false, false},
		{math.NaN(), 0.02, 7, false, false}, {0.06, math.NaN(), 9, false, false},
	} {
		if agrees, ok := BraidBodyAgrees(c.body, c.component, c.parts); agrees != c.agrees || ok != c.ok {
			t.Errorf("%+v: %t, %t", c, agrees, ok)
		}
	}
}

// TestCableLaidBody: seven circles of 8 mm lie in one of 24 mm; rope of 12 and of 30
// mm makes bodies of 36 and 90 mm, and a body that is measured loose or drawn tight is
// up to 15 % off.
func TestCableLaidBody(t *testing.T) {
	for component, want := range map[float64]bool{0.008: true, 0.0071: true, 0.0092: true, 0.0069: false, 0.0095: false, 0.012: false, 0.030: false} {
		if agrees, ok := CableLaidBodyAgrees(0.024, component); !ok || agrees != want {
			t.Errorf("24 mm of rope of %g m agree: %v, %v", component, agrees, ok)
		}
	}
	if _, ok := CableLaidBodyAgrees(0.024, 0); ok {
		t.Error("no rope")
	}
}
