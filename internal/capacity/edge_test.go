package capacity

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// TestEdgeFactor: rope and chain are cut by edges of less than 1 d and bent by
// those of up to 3 d (a glossary of insurers, read); web and round slings are cut
// under 3 thicknesses (AS 1353.2, AS 4497.2, read), and mesh is taken to be under 6
// (common practice).
func TestEdgeFactor(t *testing.T) {
	for _, c := range []struct {
		kind         Kind
		radius, size float64
		factor       float64
		why          string
	}{
		{WireRope, 0, 0.02, 0, "sharp"},
		{WireRope, 0.0199, 0.02, 0, "sharp"},
		{WireRope, 0.02, 0.02, 1 - 0.5/math.Sqrt2, "twice"}, // a body of D/d 2
		{Grommet, 0.04, 0.02, 0.75, "twice"},                // D/d 4
		{Chain, 0.0312499999999, 0.01, 1, ""},
		{Chain, 0.02, 0.01, 0.75, "twice"},
		{Chain, 0.0099, 0.01, 0, "sharp"},
		{WireRope, 0.06, 0.02, 1, ""},
		{WireRope, 0.06 * (1 - 1e-12), 0.02, 1, ""},
		{WireRope, 0.0599, 0.02, 1 - 0.5/math.Sqrt(5.99), "twice"},
		{WireRope, 1, 0.02, 1, ""},
		{Web, 0.0239, 0.008, 0, "sharp"},
		{Web, 0.024, 0.008, 1, ""},
		{Round, 0, 0.03, 0, "sharp"},
		{Round, 0.09, 0.03, 1, ""},
		{Mesh, 0.0599, 0.01, 0, "6 thicknesses"},
		{Mesh, 0.06, 0.01, 1, ""},
		{Mesh, 0.06 * (1 - 1e-12), 0.01, 1, ""},
		{Mesh, 1, 0, 0, "no sizes"},
		{Hardware, 1, 0.01, 0, "no source"},
		{"", 1, 0.01, 0, "no source"},
		{WireRope, -0.01, 0.02, 0, "no sizes"},
		{WireRope, math.NaN(), 0.02, 0, "no sizes"},
		{Web, 0.1, 0, 0, "no sizes"},
		{Web, 0.1, math.NaN(), 0, "no sizes"},
		{Chain, 0.1, math.Inf(1), 0, "no sizes"},
	} {
		got, ok, why := EdgeFactor(c.kind, c.radius, c.size)
		if math.Abs(got-c.factor) > 1e-9 || ok != (c.factor > 0) || !strings.Contains(why, c.why) || (c.why == "") != (why == "") {
			t.Errorf("%+v: %g, %t, %q", c, got, ok, why)
		}
	}
}

func TestRounderEdgeLeavesMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kind := rapid.SampledFrom([]Kind{WireRope, Grommet, Chain, Web, Round, Mesh}).Draw(t, "kind")
		size := rapid.Float64Range(0.004, 0.1).Draw(t, "size")
		sharp := rapid.Float64Range(0, 0.4).Draw(t, "radius")
		blunt := rapid.Float64Range(sharp, 0.4).Draw(t, "larger")
		a, okA, _ := EdgeFactor(kind, sharp, size)
		b, okB, _ := EdgeFactor(kind, blunt, size)
		if a > b || b > 1 || okA && !okB || okA != (a > 0) {
			t.Fatalf("%g m: %g, %t; %g m: %g, %t", sharp, a, okA, blunt, b, okB)
		}
		if okB && (kind == WireRope || kind == Chain) && blunt < 2.99*size {
			if asBend, err := BendEfficiency(2 * blunt / size); err != nil || b > asBend+1e-12 {
				t.Fatalf("an edge of %g d leaves %g, a body of that radius %g, %v", blunt/size, b, asBend, err)
			}
		}
	})
}
