package capacity

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/quantity"
)

// TestPublishedFittingsAreFarFromWhatTheirSectionCanHold: what is made and sold is
// rated for no more than 85 % of what its section can be, and one rated ten
// times as high for more.
func TestPublishedFittingsAreFarFromWhatTheirSectionCanHold(t *testing.T) {
	const near, decimalPoint = 0.85, 10
	for _, row := range published(t, "section-ratings.csv") {
		section := float64(must(quantity.ParseLength(row["section"])))
		rated := must(quantity.ParseLoad(row["rated_load"])).Newtons
		most := mostByName(t, row, section)
		if ratio := rated / most; ratio > near || ratio*decimalPoint <= 1 {
			t.Errorf("%v: rated at %.2f of the most", row, ratio)
		}
	}
}

func mostByName(t *testing.T, row map[string]string, sectionM float64) float64 {
	t.Helper()
	switch what := row["what"]; what {
	case "bow", "link":
		return BarsMostRatedN(sectionM)
	case "pin":
		return PinMostRatedN(sectionM)
	case "hook_eye":
		return EyeMostRatedN(sectionM)
	case "bowl":
		return BowlMostRatedN(sectionM)
	default:
		if !strings.HasSuffix(what, "_sling") {
			t.Fatalf("%q is no such thing", what)
		}
		return FabricMostRatedN(Kind(what), row["material"], sectionM, float64(must(quantity.ParseLength(row["thickness"]))))
	}
}

// TestMostRatedByHand: 10 mm in N/mm2 over a factor of 4, worked by hand.
func TestMostRatedByHand(t *testing.T) {
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"two sides of 78.5 mm2 at 1000", BarsMostRatedN(0.010), 39270},
		{"two shears of 78.5 mm2 at 600", PinMostRatedN(0.010), 23562},
		{"two sides of 15 by 10 mm at 1000", EyeMostRatedN(0.010), 75000},
		{"100 mm2 at 1000", BowlMostRatedN(0.010), 25000},
		{"420 mm2 of polyester at 1000 over 5", FabricMostRatedN(Web, "polyester", 0.060, 0.007), 84000},
		{"600 mm2 of HMPE at 3000 over 5", FabricMostRatedN(Round, "hmpe", 0.040, 0.015), 360000},
		{"the same of a material that is not known", FabricMostRatedN(Round, "", 0.040, 0.015), 360000},
		{"500 mm2 of mesh at 400 over 5", FabricMostRatedN(Mesh, "", 0.050, 0.010), 40000},
		{"chain is no fabric", FabricMostRatedN(Chain, "", 0.050, 0.010), 0},
	} {
		if math.Abs(c.got-c.want) > 1e-4*c.want {
			t.Errorf("%s: %.0f, not %.0f", c.name, c.got, c.want)
		}
	}
}

// TestAHookIsBentToo: by statics of a hook that is as wide as it opens, its whole
// section yielding, with a section four fifths as thick as wide.
func TestAHookIsBentToo(t *testing.T) {
	const width, thickness = 0.030, 0.024
	arm := width/2 + width/2
	plastic := thickness * width * width / 4
	// force/area + force*arm/plastic = stress
	byStatics := sectionSteelPa / (1/(width*thickness) + arm/plastic) / sectionFactor
	if most := BowlMostRatedN(width); most < 4*byStatics || most > 8*byStatics {
		t.Errorf("%.0f N, by statics %.0f N", most, byStatics)
	}
}

func TestThickerIsRatedForMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		thin := rapid.Float64Range(0.001, 0.3).Draw(t, "thin")
		thick := rapid.Float64Range(thin*1.001, 0.5).Draw(t, "thick")
		for name, most := range map[string]func(float64) float64{
			"bars": BarsMostRatedN, "pin": PinMostRatedN, "eye": EyeMostRatedN, "bowl": BowlMostRatedN,
			"webbing": func(x float64) float64 { return FabricMostRatedN(Web, "nylon", x, 0.007) },
			"layers":  func(x float64) float64 { return FabricMostRatedN(Web, "nylon", 0.05, x) },
		} {
			if most(thin) >= most(thick) || !(most(thin) > 0) {
				t.Errorf("%s of %g and %g m: %g and %g N", name, thin, thick, most(thin), most(thick))
			}
		}
	})
	for _, none := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if BarsMostRatedN(none) != 0 || PinMostRatedN(none) != 0 || EyeMostRatedN(none) != 0 || BowlMostRatedN(none) != 0 ||
			FabricMostRatedN(Web, "", none, 1) != 0 || FabricMostRatedN(Web, "", 1, none) != 0 {
			t.Errorf("%g m is no size", none)
		}
	}
}
