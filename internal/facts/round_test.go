package facts

import (
	"math"
	"math/big"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

func TestRound(t *testing.T) {
	for _, c := range []struct{ x, want float64 }{
		{0, 0},
		{1234567890.5, 1234567890},
		{0.1 + 0.2, 0.3},
		{86519.26929999999, 86519.2693},
		{1.00000000049, 1},
		{1.0000000051, 1.00000001},
		{-44.999999999999, -45},
		{5e-324, 5e-324},
		{math.MaxFloat64, 1.79769313e308},
		{math.Inf(-1), math.Inf(-1)},
	} {
		if got := Round(c.x); got != c.want {
			t.Errorf("%v becomes %v, not %v", c.x, got, c.want)
		}
	}
	if got := Round(math.Copysign(0, -1)); math.Signbit(got) {
		t.Error("a negative zero stays")
	}
	if !math.IsNaN(Round(math.NaN())) {
		t.Error("what is no number becomes one")
	}
}

func TestRoundProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := number().Draw(t, "x")
		r := Round(x)
		if Round(r) != r {
			t.Fatalf("%v, then %v, then %v", x, r, Round(r))
		}
		if Round(-x) != -r && x != 0 {
			t.Fatalf("%v becomes %v, and the other way %v", x, r, Round(-x))
		}
		digits := strings.TrimRight(strings.Replace(strings.TrimLeft(strings.Split(strconv.FormatFloat(r, 'e', -1, 64), "e")[0], "-"), ".", "", 1), "0")
		if len(digits) > significantDigits {
			t.Fatalf("%v keeps %d digits", r, len(digits))
		}
		// Half a unit of the ninth digit, exactly: at most 5e-9 of the value.
		off := new(big.Float).Sub(big.NewFloat(x), big.NewFloat(r))
		if most := math.Abs(x) * 5.0000001e-9; off.Abs(off).Cmp(big.NewFloat(most)) > 0 {
			t.Fatalf("%v becomes %v", x, r)
		}
	})
}

func TestFinish(t *testing.T) {
	third := 1.0 / 3
	d := Document{
		Gear:  []Gear{{Inspection: &Inspection{OverdueDays: &third}}},
		Hooks: []Hook{{RiggingMassKg: 2.0 / 3}},
	}
	d.Finish()
	if got := *d.Gear[0].Inspection.OverdueDays; got != 0.333333333 {
		t.Errorf("inside a record: %v", got)
	}
	if got := d.Hooks[0].RiggingMassKg; got != 0.666666667 {
		t.Errorf("in a record: %v", got)
	}
	if d.Legs == nil || d.Gear[0].Tag.Shows == nil {
		t.Error("an empty list is null")
	}
	again := d
	again.Finish()
	if diff := cmp.Diff(d, again); diff != "" {
		t.Error(diff)
	}
}
