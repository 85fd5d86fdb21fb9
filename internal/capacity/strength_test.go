package capacity

import (
	"cmp"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

const (
	poundN    = 4.4482216152605 // exact, NIST SP 811
	shortTonN = 2000 * poundN   // force
	tonneN    = 1000 * 9.80665  // force, standard gravity
	inchM     = 0.0254          // exact
	eighthM   = 0.0254 / 8      // exact
	quarterM  = 2 * eighthM     // exact
	halfInchM = 4 * eighthM     // exact
)

// TestPublishedStrength: a fifth of the nominal strength.
func TestPublishedStrength(t *testing.T) {
	for _, row := range published(t, "rope-strengths.csv") {
		r := Rope{Class: row["class"], Core: row["core"], Grade: row["grade"], DiameterM: inches(t, row["diameter_in"])}
		got, ok := NominalStrengthN(r)
		if want := value(t, row["fifth_of_strength_kn"]); !ok || math.Abs(got/5e3-want) > value(t, row["rounding_kn"])/2 {
			t.Errorf("%s in: a fifth is %.3f kN, %t; published %g", row["diameter_in"], got/5e3, ok, want)
		}
	}
}

func TestNominalStrength(t *testing.T) {
	for _, c := range []struct {
		class, core, grade string
		diameterM          float64
		strengthN          float64
	}{
		// K d^2 R, worked by hand.
		{"6x19", "iwrc", "1770", 0.022, 304_978},
		{"6x36", "fiber", "1960", 0.020, 258_720},
		{"6x37", "iwrc", "2160", 0.010, 76_896},
		{"6x7", "fiber", "1770", 0.010, 58_764},
		{"6x7", "iwrc", "1770", 0.010, 63_543},
		{"8x36", "fiber", "1770", 0.010, 51_861},
		{"8x36", "iwrc", "1770", 0.010, 63_012},
		// Rows of the US tables.
		{"6x19", "fiber", "ips", quarterM, 5480 * poundN},
		{"6x19", "fiber", "ips", 2 * inchM, 320_000 * poundN},
		{"6x37", "iwrc", "eips", halfInchM, 13.3 * shortTonN},
		{"6x36", "fiber", "eips", inchM, 45.9 * shortTonN},
		// By ratio, where there is no table.
		{"6x19", "iwrc", "eeips", halfInchM, 14.63 * shortTonN},
		{"6x19", "fiber", "eeips", inchM, 50.49 * shortTonN},
		{"6x19", "iwrc", "ips", inchM, 51.7 / 1.15 * shortTonN},
		// Off the sizes: 13 mm is stronger for its size at 1/2 in than at 9/16,
		// 29 mm at 1-1/8 than at 1-1/4. 9.3 mm is within the neighbors.
		{"6x19", "fiber", "ips", 0.013, 21_400 * poundN * math.Pow(13/12.7, 2)},
		{"6x19", "iwrc", "eips", 0.029, 65.0 * shortTonN * math.Pow(29/28.575, 2)},
		{"6x19", "iwrc", "eips", 0.0085, 7.5 * shortTonN * math.Pow(8.5/9.525, 2)},
		// A little outside the table its end row is followed.
		{"6x19", "iwrc", "eips", 0.0078, 5.2 * shortTonN * math.Pow(7.8/7.9375, 2)},
		{"6x19", "fiber", "ips", 0.052, 320_000 * poundN * math.Pow(52/50.8, 2)},
	} {
		got, ok := NominalStrengthN(Rope{Class: c.class, Core: c.core, Grade: c.grade, DiameterM: c.diameterM})
		if !ok || math.Abs(got-c.strengthN) > 1e-5*c.strengthN {
			t.Errorf("%+v: %.0f N, %t", c, got, ok)
		}
	}
}

func TestUnknownStrength(t *testing.T) {
	for name, r := range map[string]Rope{
		"no class":                {"", "iwrc", "1770", 0.02, false},
		"no core":                 {"6x19", "", "1770", 0.02, false},
		"no grade":                {"6x19", "iwrc", "", 0.02, false},
		"no core, US":             {"6x19", "", "eips", 0.02, false},
		"no class, US":            {"", "iwrc", "eips", 0.02, false},
		"class without a K":       {"8x19", "iwrc", "1770", 0.02, false},
		"class without a table":   {"6x7", "fiber", "ips", 0.02, false},
		"other class":             {"19x7", "iwrc", "1770", 0.02, false},
		"other grade":             {"6x19", "iwrc", "1670", 0.02, false},
		"other core":              {"6x19", "wsc", "eips", 0.02, false},
		"thinner than the table":  {"6x19", "iwrc", "eips", quarterM, false},
		"thicker than the table":  {"6x19", "fiber", "eips", 9 * eighthM, false},
		"thicker by ratio":        {"6x19", "iwrc", "ips", 14 * eighthM, false},
		"no diameter":             {"6x19", "iwrc", "1770", 0, false},
		"no diameter, US":         {"6x19", "iwrc", "eips", 0, false},
		"diameter below zero":     {"6x19", "iwrc", "1770", -0.02, false},
		"diameter is no number":   {"6x19", "iwrc", "1770", math.NaN(), false},
		"diameter without bounds": {"6x19", "iwrc", "1770", math.Inf(1), false},
	} {
		if got, ok := NominalStrengthN(r); ok || got != 0 {
			t.Errorf("%s: %g N, %t", name, got, ok)
		}
	}
}

// TestTablesRiseEvenly guards against a slip in copying: sizes rise, and
// strength over diameter squared falls by 3 % a row at most, and grows by about
// 1 %, which thinnerThanTable rests on; the last row is the weakest for its
// size, which thicker ropes are taken by.
func TestTablesRiseEvenly(t *testing.T) {
	for made, rows := range strengthTables() {
		if !slices.IsSortedFunc(rows, func(a, b sizedStrength) int { return cmp.Compare(a.diameterM, b.diameterM) }) {
			t.Errorf("%v: sizes do not rise", made)
		}
		last := rows[len(rows)-1].perSquare
		for i := range rows[1:] {
			if rows[i].perSquare <= last {
				t.Errorf("%v: %.4f m is weaker for its size than the last row", made, rows[i].diameterM)
			}
			if step := rows[i].perSquare / rows[i+1].perSquare; step < 1/1.011 || step > 1.03 {
				t.Errorf("%v: strength for its size falls by %.3f after %.4f m", made, step, rows[i].diameterM)
			}
		}
	}
}

// TestTablesAgreeWithMetricRope: an independent way to the size of US figures.
// Extra improved plow steel lies between ropes of 1770 and 2160 N/mm2,
// improved below 1850.
func TestTablesAgreeWithMetricRope(t *testing.T) {
	for made, rows := range strengthTables() {
		lowest, highest := 1770.0, 2160.0
		if made.grade == "ips" {
			lowest, highest = 1500, 1850
		}
		k := ropeFactors()[classAndCore{"6x19", made.core}]
		for _, row := range rows {
			if tensile := row.perSquare / k / 1e6; tensile < lowest || tensile > highest {
				t.Errorf("%v, %.4f m: as a metric rope of %.0f N/mm2", made, row.diameterM, tensile)
			}
		}
	}
}

// TestStrongestIsNeverExceeded: whatever rope there is, leaving out what is
// known of it never makes it look weaker.
func TestStrongestIsNeverExceeded(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := drawRope(t)
		strongest, ok := StrongestNominalN(r)
		if !ok || strongest <= 0 {
			t.Fatalf("%+v: %g, %t", r, strongest, ok)
		}
		if exact, known := NominalStrengthN(r); known && exact > strongest*(1+1e-12) {
			t.Fatalf("%+v: %g N, at its strongest %g", r, exact, strongest)
		}
		for _, less := range lessKnown(r) {
			if s, _ := StrongestNominalN(less); s < strongest*(1-1e-12) {
				t.Fatalf("%+v: %g N, but %+v: %g", r, strongest, less, s)
			}
		}
	})
}

func drawRope(t *rapid.T) Rope {
	return Rope{
		Class:      rapid.SampledFrom([]string{"6x7", "6x19", "6x36", "6x37", "8x19", "8x36", "", "odd"}).Draw(t, "class"),
		Core:       rapid.SampledFrom([]string{"fiber", "iwrc", "", "odd"}).Draw(t, "core"),
		Grade:      rapid.SampledFrom([]string{"ips", "eips", "eeips", "1770", "1960", "2160", "", "odd"}).Draw(t, "grade"),
		DiameterM:  rapid.Float64Range(0.004, 0.08).Draw(t, "diameter"),
		Galvanized: rapid.Bool().Draw(t, "galvanized"),
	}
}

// lessKnown leaves out class, core and grade in turn.
func lessKnown(r Rope) []Rope {
	noClass, noCore, noGrade := r, r, r
	noClass.Class, noCore.Core, noGrade.Grade = "", "", ""
	return []Rope{noClass, noCore, noGrade}
}

func TestStrongestNominal(t *testing.T) {
	for _, c := range []struct {
		rope      Rope
		strengthN float64
	}{
		{Rope{Class: "6x19", Core: "fiber", Grade: "1770", DiameterM: 0.02}, 233_640},
		{Rope{Core: "fiber", Grade: "1770", DiameterM: 0.02}, 235_056},                // as 6x7
		{Rope{Class: "8x19", Core: "fiber", Grade: "1770", DiameterM: 0.02}, 235_056}, // no K of its own
		{Rope{Class: "6x19", Grade: "1770", DiameterM: 0.02}, 252_048},
		{Rope{Class: "6x19", Core: "fiber", DiameterM: 0.08}, 4_561_920}, // 2160, beyond all tables
		{Rope{DiameterM: inchM}, 51.7 * 1.1 * shortTonN},                 // a little over 2160 N/mm2
		{Rope{Class: "8x36", Core: "fiber", Grade: "ips", DiameterM: inchM}, 83_600 * poundN},
		// Thicker than its table: for its size as the last row.
		{Rope{Class: "6x19", Core: "iwrc", Grade: "eips", DiameterM: 2 * inchM}, 4 * 114.0 / 2.25 * shortTonN},
		// Thinner than its table: for its size as the strongest row, 3/8 in, and 5 %.
		{Rope{Class: "6x19", Core: "iwrc", Grade: "eips", DiameterM: quarterM}, 1.05 * 7.5 / 2.25 * shortTonN},
	} {
		got, ok := StrongestNominalN(c.rope)
		if !ok || math.Abs(got-c.strengthN) > 1e-5*c.strengthN {
			t.Errorf("%+v: %.0f N, %t; not %.0f", c.rope, got, ok, c.strengthN)
		}
	}
	for _, none := range []float64{0, -0.02, math.NaN(), math.Inf(1)} {
		if got, ok := StrongestNominalN(Rope{DiameterM: none}); ok || got != 0 {
			t.Errorf("diameter %g: %g N, %t", none, got, ok)
		}
	}
}
