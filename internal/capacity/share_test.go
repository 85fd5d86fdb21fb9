package capacity

import (
	"math"
	"os"
	"strconv"
	"testing"
)

// TestCountedShareBuildsBridleTables: a bridle's rated load is what puts its
// single-leg rating into one leg, with two legs counted of two and three of
// three or four (OSHA Guidance on Safe Sling Use, Table 1; the file names the
// source of each row). Published values are rounded to a hundred pounds.
func TestCountedShareBuildsBridleTables(t *testing.T) {
	for _, row := range published(t, "chain-bridles.csv") {
		legs := min(int(value(t, row["legs"])), 3)
		got := CountedShareN(value(t, row["rated_load_lb"]), legs, value(t, row["angle_from_horizontal_deg"]))
		single, slack := value(t, row["single_leg_lb"]), value(t, row["rounding"])
		// The single rating is rounded to a hundred too, up or down.
		if math.Abs(got-single) > slack {
			t.Errorf("%s in, %s legs at %s deg: %.0f lb a leg, not %.0f", row["size_in"], row["legs"], row["angle_from_horizontal_deg"], got, single)
		}
	}
}

// TestCountedShareAgainstMetricTable: EN 13414-1:2003 Table 4 (read) rates
// slings by factors 1.4 and 1 for two legs, taken at 45 and 60 deg from
// vertical, and 2.1 and 1.5 for three and four, rounded down from n cos.
func TestCountedShareAgainstMetricTable(t *testing.T) {
	for _, c := range []struct {
		legs         int
		fromVertical float64
		factor       float64
	}{{2, 45, 1.4}, {2, 60, 1}, {3, 45, 2.1}, {3, 60, 1.5}} {
		if got := 1 / CountedShareN(1, c.legs, 90-c.fromVertical); got < c.factor-1e-9 || got > c.factor*1.02 {
			t.Errorf("%d legs at %g deg from vertical: factor %g, not %g", c.legs, c.fromVertical, got, c.factor)
		}
	}
}

func TestLevelLegHoldsNothing(t *testing.T) {
	if got := CountedShareN(1000, 3, 0); !math.IsInf(got, 1) {
		t.Errorf("a level leg of three would hold 1000 N with %g N", got)
	}
}

// published are the rows of a file of published figures.
func published(t *testing.T, name string) []map[string]string {
	t.Helper()
	f, err := os.Open("../../testdata/published/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := rowsOf(f)
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	return rows
}

func value(t *testing.T, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}
