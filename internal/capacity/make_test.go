package capacity

import (
	"math"
	"testing"
)

// TestStatedBend: tags state basket ratings for these D/d (common practice).
func TestStatedBend(t *testing.T) {
	for _, c := range []struct {
		make         Make
		upper, lower Termination
		ratio        float64
		ok           bool
	}{
		{SinglePart, FlemishSleeve, TurnBackSleeve, 25, true},
		{SinglePart, HandTucked, HiddenTuck, 15, true},
		{SinglePart, HandTucked, FlemishSleeve, 25, true},
		{SinglePart, "", HandTucked, 25, true},
		{SinglePart, "", "", 25, true},
		{MultiPart, FlemishSleeve, FlemishSleeve, 25, true},
		{MultiPart, HandTucked, HandTucked, 25, true},
		{CableLaid, HandTucked, HandTucked, 10, true},
		{CableLaid, "", "", 10, true},
		{StrandLaidGrommet, "", "", 5, true},
		{CableLaidGrommet, HandTucked, HandTucked, 5, true},
		{"", FlemishSleeve, FlemishSleeve, 0, false},
		{"braided", HandTucked, HandTucked, 0, false},
	} {
		if got, ok := StatedBendD(c.make, c.upper, c.lower); got != c.ratio || ok != c.ok {
			t.Errorf("%+v: %g, %t", c, got, ok)
		}
	}
}

func TestBendDiameter(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct {
		make                       Make
		bodyM, componentM, counted float64
		ok                         bool
	}{
		{SinglePart, 0.02, 0, 0.02, true},
		{MultiPart, 0.06, 0.02, 0.02, true},
		{MultiPart, 0.06, 0, 0, false},
		{MultiPart, 0, 0.02, 0.02, true},
		{MultiPart, 0.06, nan, 0, false},
		{CableLaid, 0.06, 0.02, 0.06, true},
		{StrandLaidGrommet, 0.06, 0, 0.06, true},
		{CableLaidGrommet, 0.06, 0.02, 0.06, true},
		{CableLaidGrommet, 0, 0.02, 0, false},
		{SinglePart, -0.02, 0.02, 0, false},
		{"", 0.06, 0.02, 0, false},
	} {
		if got, ok := BendDiameterM(c.make, c.bodyM, c.componentM); got != c.counted || ok != c.ok {
			t.Errorf("%+v: %g, %t", c, got, ok)
		}
	}
}

// TestTagIsWholeWhereItIsStated: round a body as wide as stated, every make has
// its tag's basket rating, and round a narrower one less, strength unknown.
func TestTagIsWholeWhereItIsStated(t *testing.T) {
	for made := range statedBends() {
		stated, _ := StatedBendD(made, "", "")
		at, errAt := BasketRatedN(1000, 0, stated, stated)
		under, errUnder := BasketRatedN(1000, 0, 0.9*stated, stated)
		if errAt != nil || errUnder != nil || at != 1000 || !(under < at) {
			t.Errorf("%s: %g N, %v at D/d %g; %g N, %v under it", made, at, errAt, stated, under, errUnder)
		}
	}
}

// TestLeastEyeBend: EN 13414-1:2003 Table 4 note 1 (read) asks 2 d of soft eyes;
// under 1 d no rope is bent (marine lifting guideline, read).
func TestLeastEyeBend(t *testing.T) {
	if never, asked := LeastEyeBendD(true); never != 1 || asked != 2 {
		t.Errorf("soft: %g, %g", never, asked)
	}
	if never, asked := LeastEyeBendD(false); never != 1 || asked != 1 {
		t.Errorf("thimbled: %g, %g", never, asked)
	}
}
