package capacity

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestPublishedBend is a row of the table of the trade, by its sizes.
func TestPublishedBend(t *testing.T) {
	for _, row := range published(t, "bend-efficiencies.csv") {
		ratio := inches(t, row["body_in"]) / inches(t, row["rope_in"])
		if want := value(t, row["body_over_rope"]); math.Abs(ratio-want) > 1e-9 {
			t.Errorf("case %s: D/d %g, published %g", row["case"], ratio, want)
		}
		got, err := TableBendEfficiency(ratio)
		want, slack := value(t, row["percent"]), value(t, row["rounding_percent"])/2
		if err != nil || math.Abs(100*got-want) > slack {
			t.Errorf("case %s: %g, %v; published %g %%", row["case"], got, err, want)
		}
		if formula, err := BendEfficiency(ratio); err != nil || 100*formula > want+slack {
			t.Errorf("case %s: the formula gives %g, %v, more than the table", row["case"], formula, err)
		}
	}
}

// TestBendEfficiency: two parts that are bent round one rope diameter are worth
// one rope, and square numbers make round figures.
func TestBendEfficiency(t *testing.T) {
	for _, c := range []struct{ ratio, efficiency float64 }{
		{1, 0.5}, {4, 0.75}, {6.25, 0.8}, {25, 0.9}, {100, 0.95}, {math.Inf(1), 1},
	} {
		if got, err := BendEfficiency(c.ratio); err != nil || math.Abs(got-c.efficiency) > 1e-12 {
			t.Errorf("D/d %g: %g, %v; not %g", c.ratio, got, err, c.efficiency)
		}
	}
	for _, c := range []struct{ ratio, efficiency float64 }{
		{1, 0.50}, {1.99, 0.50}, {2, 0.65}, {10 * (1 - 1e-12), 0.86}, {14.9, 0.86}, {39.9, 0.93}, {40, 0.95}, {1000, 0.95},
	} {
		if got, err := TableBendEfficiency(c.ratio); err != nil || got != c.efficiency {
			t.Errorf("D/d %g by table: %g, %v; not %g", c.ratio, got, err, c.efficiency)
		}
	}
	for _, ratio := range []float64{0.999, 0, -1, math.NaN(), math.Inf(-1)} {
		for name, efficiency := range bendFunctions {
			if got, err := efficiency(ratio); err == nil || got != 0 {
				t.Errorf("D/d %g by %s: %g", ratio, name, got)
			}
		}
	}
}

var bendFunctions = map[string]func(float64) (float64, error){
	"formula": BendEfficiency, "table": TableBendEfficiency,
}

// TestFormulaAgainstTable: a marine guideline and the table of the trade come
// from elsewhere and tell the same within 0.03.
func TestFormulaAgainstTable(t *testing.T) {
	last := bendRow{}
	for _, row := range bendTable() {
		if row.bodyOverRope <= last.bodyOverRope || row.efficiency <= last.efficiency {
			t.Errorf("the table does not rise at D/d %g", row.bodyOverRope)
		}
		last = row
		formula, err := BendEfficiency(row.bodyOverRope)
		if over := row.efficiency - formula; err != nil || over > 0.03 || over < -0.01 {
			t.Errorf("D/d %g: formula %g, %v; table %g", row.bodyOverRope, formula, err, row.efficiency)
		}
	}
	if last.bodyOverRope != 40 || len(bendTable()) != 10 {
		t.Errorf("%d rows up to D/d %g", len(bendTable()), last.bodyOverRope)
	}
}

func TestWiderBodyLeavesMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		narrow := rapid.Float64Range(1, 60).Draw(t, "narrow")
		wide := rapid.Float64Range(narrow, 60).Draw(t, "wide")
		for name, efficiency := range bendFunctions {
			a, errA := efficiency(narrow)
			b, errB := efficiency(wide)
			if errA != nil || errB != nil || !(a >= 0.5 && a <= b && b <= 1) {
				t.Fatalf("%s: D/d %g: %g, %v; %g: %g, %v", name, narrow, a, errA, wide, b, errB)
			}
		}
	})
}
