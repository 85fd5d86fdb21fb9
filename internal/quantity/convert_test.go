package quantity

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"

	"pgregory.net/rapid"
)

// The published factors have seven digits, or are exact with fewer.
func TestPublishedConversions(t *testing.T) {
	f, err := os.Open("testdata/conversions.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(rows) < 20 {
		t.Fatalf("only %d rows", len(rows))
	}
	for _, row := range rows[1:] {
		k, err := ParseKind(row[0])
		if err != nil {
			t.Fatal(err)
		}
		want, err := strconv.ParseFloat(row[2], 64)
		if err != nil {
			t.Fatal(err)
		}
		got, err := k.Parse(row[1])
		if err != nil {
			t.Errorf("%s: %v", row[1], err)
		}
		if math.Abs(got-want) > 0.6e-6*math.Abs(want) {
			t.Errorf("%s is %v in SI, published as %v (%s)", row[1], got, want, row[3])
		}
	}
}

func TestAccepted(t *testing.T) {
	in := func(x float64) float64 { return x * 254 / 10000 }
	for _, c := range []struct {
		kind Kind
		text string
		want float64
	}{
		{KindMass, "8650 kg", 8650},
		{KindMass, "  8650\t kg ", 8650},
		{KindMass, "12t", 12000},
		{KindMass, "+2 t", 2000},
		{KindMass, "1/2 t", 500},
		{KindMass, "8-1/2 t", 8500},
		{KindMass, "008 kg", 8},
		{KindLength, ".5 m", 0.5},
		{KindLength, "-3 m", -3},
		{KindLength, "-0 m", 0},
		{KindLength, "1-1/8 in", in(1.125)},
		{KindLength, "1 1/8 in", in(1.125)},
		{KindLength, "3/4in", in(0.75)},
		{KindLength, "9/8 in", in(1.125)},
		{KindLength, "12 ft 6 in", in(150)},
		{KindLength, "12ft6in", in(150)},
		{KindLength, "12 ft 6-1/2 in", in(150.5)},
		{KindLength, "12 ft 6 1/2 in", in(150.5)},
		{KindLength, "12 ft 6.25 in", in(150.25)},
		{KindLength, "12 ft 1/2 in", in(144.5)},
		{KindLength, "12 ft 0 in", in(144)},
		{KindLength, "0 ft 6 in", in(6)},
		{KindLength, "-1 ft 6 in", in(-18)},
		{KindLength, "12 ft 11-1/2 in", in(155.5)},
		{KindMass, "1000000000 kg", 1e9},
		{KindTemperature, "-273.15 C", -273.15},
		{KindAngle, "-12.5 deg", -12.5},
		{KindTemperature, "0 F", -160.0 / 9},
		{KindTemperature, "+5 C", 5},
		{KindRatio, "2%", 0.02},
		{KindSpeed, "36km/h", 10},
		{KindPressure, "10t/m2", 98066.5},
		{KindLoad, "85 kN", 85000},
		{KindLoad, "6.5 t", 63743.225},
		{KindMoment, "12 kN m", 12000},
		{KindMoment, "12kN m", 12000},
		{KindMoment, "1-1/2 kN \t m", 1500},
		// The product of the exact factors of NIST SP 811 (2008), app. B.8, for the
		// pound-force and the foot; from memory.
		{KindMoment, "1 lbf ft", 1.3558179483314004},
	} {
		got, err := c.kind.Parse(c.text)
		if err != nil || got != c.want || math.Signbit(got) != (c.want < 0) {
			t.Errorf("%v %q: got %v, %v; want %v", c.kind, c.text, got, err, c.want)
		}
	}
}

// The fast way has to give the bits of the exact one.
func TestFastConversionIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := drawNumber(t)
		u := rapid.SampledFrom(units[:]).Draw(t, "unit")
		s := u.scaleOf(rapid.SampledFrom([]Kind{u.kind, KindLoad}).Draw(t, "kind"))
		fast, ok := n.fast(s)
		if !ok {
			t.Skip("no fast way")
		}
		n.negative = false
		if exact, _ := n.exact(s).Float64(); fast != exact {
			t.Fatalf("%+v in %s: fast %v, exact %v", n, u.name, fast, exact)
		}
	})
}

func drawNumber(t *rapid.T) number {
	n := number{
		negative: rapid.Bool().Draw(t, "negative"),
		whole:    rapid.StringMatching(`[0-9]{1,8}`).Draw(t, "whole"),
	}
	switch rapid.IntRange(0, 2).Draw(t, "form") {
	case 1:
		n.decimals = rapid.StringMatching(`[0-9]{1,8}`).Draw(t, "decimals")
	case 2:
		n.over = rapid.StringMatching(`[0-9]{1,5}`).Draw(t, "over")
		n.under = "1" + rapid.StringMatching(`[0-9]{0,5}`).Draw(t, "under")
	}
	return n
}

// float64 products of the published factors are an independent way to the same
// value, good to a few units in the last place.
func TestConversionAgainstFloats(t *testing.T) {
	factors := map[string]float64{
		"lb": 0.45359237, "short_ton": 907.18474, "long_ton": 1016.0469088, "ft": 0.3048, "in": 0.0254,
		"lbf": 4.4482216152605, "psi": 4.4482216152605 / (0.0254 * 0.0254), "psf": 4.4482216152605 / (0.3048 * 0.3048),
		"lbf ft": 4.4482216152605 * 0.3048,
		"kt":     1852.0 / 3600, "mph": 1609.344 / 3600, "km/h": 1 / 3.6, "t/m2": 9806.65,
	}
	rapid.Check(t, func(t *rapid.T) {
		n := drawNumber(t)
		u := rapid.SampledFrom(units[:]).Draw(t, "unit")
		factor, ok := factors[u.name]
		if !ok {
			t.Skip("whole power of ten")
		}
		x, _ := n.rat().Float64()
		if got, want := n.convert(u.scale), x*factor; math.Abs(got-want) > 1e-15*math.Abs(want) {
			t.Fatalf("%v %s: got %v, want %v", x, u.name, got, want)
		}
	})
}
