package capacity

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/gear"
)

// TestFabricStiffness: polyester stretches about 3 % at its rated load, nylon 6 to
// 8 % (common practice).
func TestFabricStiffness(t *testing.T) {
	for _, c := range []struct {
		kind     Kind
		material string
		ratedN   float64
		longer   float64 // of 1 m, at the rated load, in meters
	}{
		{Web, "polyester", 30e3, 0.03}, {Web, "nylon", 30e3, 0.06}, {Round, "polyester", 50e3, 0.03},
		{Round, "nylon", 50e3, 0.06}, {Web, "", 30e3, 0.03}, {Round, "", 50e3, 0.03},
	} {
		ea, ok := FabricStiffnessN(c.kind, c.material, c.ratedN)
		if got := c.ratedN * 1 / ea; !ok || math.Abs(got-c.longer) > 1e-12 {
			t.Errorf("%+v: a meter becomes %g m longer, %t", c, got, ok)
		}
	}
	for _, c := range []struct {
		kind     Kind
		material string
		ratedN   float64
	}{
		{Chain, "", 1e4}, {WireRope, "polyester", 1e4}, {"", "polyester", 1e4}, {Web, "cotton", 1e4}, {Mesh, "", 1e4},
		{Web, "nylon", 0}, {Web, "nylon", -1}, {Round, "", math.NaN()}, {Round, "", math.Inf(1)},
	} {
		if got, ok := FabricStiffnessN(c.kind, c.material, c.ratedN); ok || got != 0 {
			t.Errorf("%+v: %g N", c, got)
		}
	}
}

// TestChainStiffness lies between that of mooring chain without studs, 54 GPa over
// both bars (from memory), and two straight bars of steel, 206 GPa, which no chain
// can reach.
func TestChainStiffness(t *testing.T) {
	const size, bars = 0.01, 2 * math.Pi / 4 * 0.01 * 0.01
	got, ok := ChainStiffnessN(size)
	if !ok || got < 54e9*bars || got > 206e9*bars {
		t.Errorf("10 mm: %g N, %t; not between %g and %g", got, ok, 54e9*bars, 206e9*bars)
	}
	if math.Abs(got-15.708e6) > 1e3 { // 157.08 mm2 x 100 kN/mm2, by hand
		t.Errorf("10 mm: %g N", got)
	}
	if twice, _ := ChainStiffnessN(2 * size); math.Abs(twice-4*got) > 1e-6*got {
		t.Errorf("20 mm: %g N beside %g", twice, got)
	}
}

// TestLaidAgain, by hand: nine parts of 10 mm with a wire core, 46 mm2 each, at 80
// kN/mm2; a body of 60 mm is seven ropes of 20 mm.
func TestLaidAgain(t *testing.T) {
	braided, ok := MultiPartStiffnessN(0.010, 9, gear.CoreIWRC)
	if !ok || math.Abs(braided-33.12e6) > 1 {
		t.Errorf("braided: %g N, %t", braided, ok)
	}
	cable, ok := CableLaidStiffnessN(0.060, gear.CoreIWRC)
	seven, _ := MultiPartStiffnessN(0.020, 7, gear.CoreIWRC)
	if !ok || math.Abs(cable-seven) > 1e-6 || math.Abs(cable-103.04e6) > 1 {
		t.Errorf("cable-laid: %g N, %t; seven ropes %g", cable, ok, seven)
	}
}

func TestNoStiffnessWithoutSize(t *testing.T) {
	for _, none := range []float64{0, -0.02, math.NaN(), math.Inf(1)} {
		chain, okChain := ChainStiffnessN(none)
		braid, okBraid := MultiPartStiffnessN(none, 7, gear.CoreIWRC)
		cable, okCable := CableLaidStiffnessN(none, gear.CoreFiber)
		if okChain || okBraid || okCable || chain != 0 || braid != 0 || cable != 0 {
			t.Errorf("size %g: %g, %g, %g N", none, chain, braid, cable)
		}
	}
	for _, parts := range []int{1, 0, -7} {
		if got, ok := MultiPartStiffnessN(0.01, parts, gear.CoreIWRC); ok || got != 0 {
			t.Errorf("%d parts: %g N", parts, got)
		}
	}
}

// TestLaidAgainIsSofter than single rope of the same body, or of the same ropes
// side by side, and stiffer with what is not known.
func TestLaidAgainIsSofter(t *testing.T) {
	cores := []gear.Core{gear.CoreUnknown, gear.CoreFiber, gear.CoreIWRC}
	rapid.Check(t, func(t *rapid.T) {
		d := rapid.Float64Range(0.008, 0.2).Draw(t, "diameter")
		core := rapid.SampledFrom(cores).Draw(t, "core")
		parts := rapid.IntRange(2, 12).Draw(t, "parts")
		cable, _ := CableLaidStiffnessN(d, core)
		braid, _ := MultiPartStiffnessN(d, parts, core)
		unknown, _ := MultiPartStiffnessN(d, parts, gear.CoreUnknown)
		if single := AxialStiffnessN(d, core); !(0 < cable && cable < single) || !(0 < braid && braid < float64(parts)*single) || braid > unknown {
			t.Fatalf("single %g N, cable-laid %g, %d parts %g, core not known %g", single, cable, parts, braid, unknown)
		}
	})
}
