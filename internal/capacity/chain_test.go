package capacity

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestPublishedChains: singles of OSHA Guidance on Safe Sling Use Table 1, in the
// size printed.
func TestPublishedChains(t *testing.T) {
	for _, row := range published(t, "chain-bridles.csv") {
		got, ok := ChainRatedN(inches(t, row["size_in"]), "80", ByAngle)
		if want := value(t, row["single_leg_lb"]); !ok || math.Abs(got/poundN-want) > 1e-6 {
			t.Errorf("%s in: %.1f lb, %t; published %g", row["size_in"], got/poundN, ok, want)
		}
	}
}

// TestChainTableAgreesWithItsGrade: a chain breaks at a mean stress of ten times
// its grade, in N/mm2, and is rated for a quarter of that (EN 818-2, from memory).
// US tables are rounded to a hundred pounds, metric ones down to preferred
// numbers.
func TestChainTableAgreesWithItsGrade(t *testing.T) {
	for _, row := range chainTable() {
		bar := row.sizesM[len(row.sizesM)-1] // the metric size
		byGrade := 2 * math.Pi / 4 * bar * bar * value(t, row.grade) * 10e6 / 4
		over, under := 0.02, -0.03
		if row.practice == ByBand {
			over, under = 0, -0.05
		}
		if off := row.ratedN/byGrade - 1; off > over || off < under {
			t.Errorf("%+v: %+.3f off its grade", row, off)
		}
		for _, size := range row.sizesM {
			most, ok := StrongestChainRatedN(size, row.grade)
			if !ok || row.ratedN > most {
				t.Errorf("%+v: at its strongest %.0f N", row, most)
			}
			if thumb := ChainThumbN(size); row.ratedN < thumb {
				t.Errorf("%+v: the rule of thumb for any chain says %.0f N", row, thumb)
			}
		}
	}
}

func TestChainTableRises(t *testing.T) {
	last := map[[2]string]chainRow{}
	for _, row := range chainTable() {
		key := [2]string{string(row.practice), row.grade}
		if before, ok := last[key]; ok && (row.sizesM[0] <= before.sizesM[0] || row.ratedN <= before.ratedN) {
			t.Errorf("%+v follows %+v", row, before)
		}
		last[key] = row
	}
	if len(last) != 4 {
		t.Errorf("%d tables", len(last))
	}
}

func TestChainRated(t *testing.T) {
	for _, c := range []struct {
		sizeM    float64
		grade    string
		practice BridlePractice
		ratedN   float64
	}{
		{0.007, "80", ByAngle, 3500 * poundN},
		{9. / 32 * inchM, "80", ByAngle, 3500 * poundN},
		{0.010, "100", ByAngle, 8800 * poundN},
		{0.010, "80", ByBand, 3.15 * tonneN},
		{0.010, "100", ByBand, 4 * tonneN},
		{3 * eighthM, "80", ByBand, 7100 * poundN}, // inch sizes are in the other table
		{0.018, "80", ByAngle, 10 * tonneN},        // and this one there
		{0.008, "80", ByAngle, 4500 * poundN},      // in both
		{0.0095, "80", ByAngle, 0},                 // between two
		{0.010, "70", ByAngle, 0},
		{0.010, "", ByAngle, 0},
		{0.010, "80", "", 0},
		{0, "80", ByAngle, 0},
		{math.NaN(), "80", ByAngle, 0},
	} {
		if got, ok := ChainRatedN(c.sizeM, c.grade, c.practice); math.Abs(got-c.ratedN) > 1e-6*c.ratedN || ok != (c.ratedN > 0) {
			t.Errorf("%+v: %g N, %t", c, got, ok)
		}
	}
	for _, none := range []float64{0, -0.01, math.NaN(), math.Inf(1)} {
		if got, ok := StrongestChainRatedN(none, "80"); ok || got != 0 {
			t.Errorf("size %g: %g N", none, got)
		}
	}
}

func TestStrongestChain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		size := rapid.Float64Range(0.004, 0.05).Draw(t, "size")
		g80, _ := StrongestChainRatedN(size, "80")
		g100, _ := StrongestChainRatedN(size, "100")
		open, ok := StrongestChainRatedN(size, "")
		thicker, _ := StrongestChainRatedN(1.01*size, "80")
		if !ok || !(g80 < g100 && g100 < open && g80 < thicker) {
			t.Fatalf("%g, %g and %g N, thicker %g", g80, g100, open, thicker)
		}
	})
}
