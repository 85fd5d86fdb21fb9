package compute_test

import (
	"fmt"
	"math"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/compute"
)

// TestBridleRatios: 7.8 t as a whole at 45 deg, which is 7.8 / (3 sin 45) for
// one leg by statics and 7.8 / 2.1 by the band of EN 13414-1:2003 Table 4
// (read).
func TestBridleRatios(t *testing.T) {
	legAngle, legBand := 7.8/(3*math.Sin(math.Pi/4)), 7.8/2.1
	const shackleT = 4.75 * 2000 * 0.45359237 / 1000 // 4-3/4 short tons; the pound: NIST SP 811
	for _, c := range []struct {
		name   string
		cond   compute.Conditions
		change func(tree) tree
		want   map[string]float64

		weakest string
	}{
		{"as a whole, by angle", conditions(), nil, map[string]float64{
			"master_over_assembly_ratio": 8 / 7.8, "intermediate_over_leg_ratio": 6.3 / legAngle, "lower_fitting_over_leg_ratio": shackleT / legAngle, "length_spread_d": 0}, "[IL1 IL2] [K1 K2 K3 K4]"},
		{"as a whole, by band", europe(), nil, map[string]float64{
			"master_over_assembly_ratio": 8 / 7.8, "intermediate_over_leg_ratio": 6.3 / legBand, "lower_fitting_over_leg_ratio": shackleT / legBand}, ""},
		{"for one leg, by angle", conditions(), oneLegOf(3), map[string]float64{
			"master_over_assembly_ratio": 8 / (3 * 1.5 * math.Sqrt(3)), "intermediate_over_leg_ratio": 2.1}, ""},
		{"for one leg, by band", europe(), oneLegOf(3), map[string]float64{"master_over_assembly_ratio": 8 / 6.3}, ""},
		{"a parked leg takes nothing off", conditions(), func(v tree) tree { return park(v, 3) }, map[string]float64{
			"master_over_assembly_ratio": 8 / 7.8, "intermediate_over_leg_ratio": 6.3 / legAngle}, ""},
		{"the weakest link and fitting", conditions(), func(v tree) tree {
			return v.set("gear/3/rated_load", "5 t").set("gear/10/rated_load", "2 t")
		}, map[string]float64{"intermediate_over_leg_ratio": 5 / legAngle, "lower_fitting_over_leg_ratio": 2 / legAngle}, "[IL2] [K3]"},
		{"two weak fittings, unlike", conditions(), func(v tree) tree {
			return v.set("gear/10/rated_load", "2 t").set("gear/8/rated_load", "2.1 t")
		}, map[string]float64{"lower_fitting_over_leg_ratio": 2 / legAngle}, "[IL1 IL2] [K1 K3]"},
		{"a fitting on a parked leg", conditions(), func(v tree) tree { return park(v.set("gear/11/rated_load", "1 t"), 3) }, map[string]float64{
			"lower_fitting_over_leg_ratio": shackleT / legAngle}, ""},
		{"longest against shortest, parked or not", conditions(), func(v tree) tree {
			return park(v.set("gear/7/length", "4.05 m").set("gear/4/length", "3.991 m"), 3)
		}, map[string]float64{"length_spread_d": 59.0 / 18}, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			v := rulesBase(t, "bridle")
			if c.change != nil {
				v = c.change(v)
			}
			f, _ := compute.Facts(decode(t, v.text()), c.cond)
			for field, want := range c.want {
				near(t, field, figure(t, f, "bridle/B1", field), want, 1e-6)
			}
			b := f.Document.Bridles[0]
			if got := fmt.Sprint(b.WeakLinks.IDs, b.WeakFittings.IDs); c.weakest != "" && got != c.weakest {
				t.Errorf("weak are %s, not %s", got, c.weakest)
			}
		})
	}
}

// oneLegOf tags the bridle for so many tonnes a leg.
func oneLegOf(tonnes int) func(tree) tree {
	return func(v tree) tree {
		return v.set("gear/0/tag/rated_for", "one_leg").set("gear/0/tag/angle_from_horizontal", "90 deg").
			set("gear/0/tag/rated_load", strconv.Itoa(tonnes)+" t")
	}
}

func TestBridleWaits(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(tree) tree
		want   map[string]string
	}{
		{"not said what for", func(v tree) tree { return v.drop("gear/0/tag/rated_for") }, map[string]string{
			"rated_for":                    "what the rated load of B1 is for `tag.rated_for` at #/gear/0/tag",
			"one_leg_rated_n":              "B1's tag does not say what its rated load is for",
			"master_over_assembly_ratio":   "B1's tag does not say what its rated load is for",
			"lower_fitting_over_leg_ratio": "B1's tag does not say what its rated load is for",
		}},
		{"no tag", func(v tree) tree { return v.drop("gear/0/tag") }, map[string]string{
			"rated_for": "no tag of B1 is recorded", "intermediate_over_leg_ratio": "no tag of B1 is recorded"}},
		{"links and fittings without a rating", func(v tree) tree {
			return v.drop("gear/1/rated_load").drop("gear/3/rated_load").drop("gear/8/rated_load")
		}, map[string]string{
			"master_over_assembly_ratio":   "ML1's rated load `rated_load` at #/gear/1",
			"intermediate_over_leg_ratio":  "IL2's rated load `rated_load` at #/gear/3",
			"lower_fitting_over_leg_ratio": "K1's rated load `rated_load` at #/gear/8",
		}},
		{"legs of unknown length", func(v tree) tree { return v.drop("gear/7/length").drop("gear/4/diameter") }, map[string]string{
			"length_spread_d": "S1's diameter `diameter` at #/gear/4; S4's length `length` at #/gear/7"}},
		{"attachments nowhere", func(v tree) tree { return v.drop("load/attachments/2/y") }, map[string]string{
			"grouped_as": "attachment C's y `y` at #/load/attachments/2"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			f, _ := c.change(rulesBase(t, "bridle")).compute(t)
			for field, want := range c.want {
				if got := labels(lacks(t, f, "bridle/B1", field)); got != want {
					t.Errorf("%s waits for %q", field, got)
				}
			}
		})
	}
}

func TestBridleCounts(t *testing.T) {
	f := park(rulesBase(t, "bridle"), 3).facts(t)
	b := f.Document.Bridles[0]
	if b.Legs != 4 || b.LegsUsed != 3 || !b.LegsOnTagGiven || *b.LegsOnTag != 4 || b.IntermediateLinks != 2 || b.LowerFittings != 3 || *b.RatedFor != "assembly" {
		t.Errorf("%+v", b)
	}
	f = rulesBase(t, "bridle").drop("gear/0/tag/legs").facts(t)
	if b := f.Document.Bridles[0]; b.LegsOnTagGiven || b.LegsOnTag != nil {
		t.Errorf("legs on a tag that names none: %+v", b)
	}
	if n := len(rulesBase(t, "two_legs").facts(t).Document.Bridles); n != 0 {
		t.Errorf("%d bridles in a lift without", n)
	}
	if n := len(withIdleBridle(rulesBase(t, "two_legs")).facts(t).Document.Bridles); n != 0 {
		t.Errorf("%d bridles, and none is used", n)
	}
}

func TestGroupedAs(t *testing.T) {
	groups := func(v tree, first, second []any) tree {
		return v.set("gear/0/groups", []any{map[string]any{"link": "IL1", "legs": first}, map[string]any{"link": "IL2", "legs": second}})
	}
	for name, c := range map[string]struct {
		change func(tree) tree
		want   string
	}{
		"along":    {func(v tree) tree { return groups(v, []any{"S1", "S4"}, []any{"S2", "S3"}) }, "adjacent"},
		"across":   {func(v tree) tree { return groups(v, []any{"S1", "S2"}, []any{"S3", "S4"}) }, "adjacent"},
		"diagonal": {func(v tree) tree { return groups(v, []any{"S1", "S3"}, []any{"S2", "S4"}) }, "diagonal"},
		"diagonal on the one link": {func(v tree) tree {
			return v.set("gear/0/groups", []any{map[string]any{"legs": []any{"S1", "S3"}}, map[string]any{"link": "IL2", "legs": []any{"S2", "S4"}}})
		}, "diagonal"},
		"all on the master link": {func(v tree) tree {
			return v.set("gear/0/groups", []any{map[string]any{"legs": []any{"S1", "S2", "S3", "S4"}}})
		}, "does_not_matter"},
		"three and one": {func(v tree) tree {
			return v.set("gear/0/groups", []any{map[string]any{"legs": []any{"S1", "S3", "S2"}}, map[string]any{"link": "IL2", "legs": []any{"S4"}}})
		}, "does_not_matter"},
		"three in use": {func(v tree) tree { return park(groups(v, []any{"S1", "S3"}, []any{"S2", "S4"}), 3) }, "does_not_matter"},
		"two at one point": {func(v tree) tree {
			return groups(v, []any{"S1", "S3"}, []any{"S2", "S4"}).set("rigging/0/legs/1/end/at", "A").set("rigging/0/legs/3/end/at", "C")
		}, "adjacent"},
	} {
		f, _ := c.change(rulesBase(t, "bridle")).compute(t)
		if got, _ := find(t, f, "bridle/B1").Field("grouped_as"); got != c.want {
			t.Errorf("%s: %v, not %s", name, got, c.want)
		}
	}
}

// TestDiagonalIsWhereLinesCross: of four points on an oval, in whatever order,
// two pairs are diagonal if the lines that join them cross.
func TestDiagonalIsWhereLinesCross(t *testing.T) {
	seen := map[any]int{}
	rapid.Check(t, func(rt *rapid.T) {
		angles := rapid.SliceOfNDistinct(rapid.IntRange(0, 35), 4, 4, rapid.ID[int]).Draw(rt, "tens of degrees")
		v := rulesBase(t, "bridle")
		var x, y [4]float64
		for i, a := range angles {
			x[i] = math.Round(1000 * (1.5 + 1.5*math.Cos(float64(a)*math.Pi/18)))
			y[i] = math.Round(1000 * (1 + math.Sin(float64(a)*math.Pi/18)))
			at := "load/attachments/" + strconv.Itoa(i)
			v.set(at+"/x", meters(int(x[i]))).set(at+"/y", meters(int(y[i])))
		}
		side := func(a, b, c int) bool { return (x[b]-x[a])*(y[c]-y[a])-(y[b]-y[a])*(x[c]-x[a]) > 0 }
		// S1 and S4 hang from one link, S2 and S3 from the other.
		crosses := side(0, 3, 1) != side(0, 3, 2) && side(1, 2, 0) != side(1, 2, 3)
		f, _ := v.compute(t)
		got, _ := find(rt, f, "bridle/B1").Field("grouped_as")
		if (got == "diagonal") != crosses {
			rt.Fatalf("points at %v: %v, and the lines cross: %v", angles, got, crosses)
		}
		seen[got]++
	})
	if seen["diagonal"] < 10 || seen["adjacent"] < 10 {
		t.Errorf("too few of each: %v", seen)
	}
}

// TestLinksHideNoSplit: the links of a bridle shift with small differences of length,
// so that one diagonal can come to carry all, as of four legs from one point: twice
// the even share (derived; the rule that counts two of four legs, NAVEDTRA 14251).
func TestLinksHideNoSplit(t *testing.T) {
	f := rulesBase(t, "bridle").facts(t)
	for _, leg := range []string{"1", "2", "3", "4"} {
		key := "leg/hook/" + leg
		if bound, even := figure(t, f, key, "tension_bound_n"), figure(t, f, key, "tension_n"); bound < 1.9*even || bound > 2.1*even {
			t.Errorf("%s: bound %.0f N, evenly %.0f N", key, bound, even)
		}
	}
}
