package compute_test

import (
	"math"
	"strings"
	"testing"

	"liftlint/internal/compute"
)

func alike(a, b, within float64) bool { return math.Abs(a-b) <= within*math.Abs(b) }

// TestBridleRating: what the tag of a whole bridle says of one leg, and of the
// legs in use together.
func TestBridleRating(t *testing.T) {
	const tonne = 1000 * gravity
	root3 := math.Sqrt(3)
	for _, c := range []struct {
		name               string
		change             func(tree) tree
		cond               compute.Conditions
		oneLegT, assemblyT float64
	}{
		{"assembly at 60 deg, statics", func(v tree) tree { return v.set("gear/0/tag/angle_from_horizontal", "60 deg") }, conditions(), 7.8 / (1.5 * root3), 7.8},
		{"assembly at 45 deg, statics", nil, conditions(), 7.8 / (3 * math.Sqrt2 / 2), 7.8},
		{"assembly at 45 deg, first band", nil, europe(), 7.8 / 2.1, 7.8},
		{"assembly at 60 deg, edge of no band: by statics", func(v tree) tree { return v.set("gear/0/tag/angle_from_horizontal", "60 deg") }, europe(), 7.8 / (1.5 * root3), 7.8},
		{"assembly at 30 deg, second band", func(v tree) tree { return v.set("gear/0/tag/angle_from_horizontal", "30 deg") }, europe(), 7.8 / 1.5, 7.8},
		{"one leg, statics", func(v tree) tree {
			return v.set("gear/0/tag/rated_for", "one_leg").set("gear/0/tag/angle_from_horizontal", "90 deg").set("gear/0/tag/rated_load", "3.7 t")
		}, conditions(), 3.7, 3.7 * 1.5 * root3},
		{"one leg, bands", func(v tree) tree {
			return v.set("gear/0/tag/rated_for", "one_leg").set("gear/0/tag/angle_from_horizontal", "90 deg").set("gear/0/tag/rated_load", "3.7 t")
		}, europe(), 3.7, 3.7 * 2.1},
		{"two of four legs in use", parkTwo, conditions(), 7.8 / (3 * math.Sqrt2 / 2), 7.8 * 2 / 3},
		{"two of four legs in use, bands", parkTwo, europe(), 7.8 / 2.1, 7.8 * 2 / 3},
		{"three of four", func(v tree) tree { return park(v, 3) }, conditions(), 7.8 / (3 * math.Sqrt2 / 2), 7.8},
	} {
		t.Run(c.name, func(t *testing.T) {
			v := rulesBase(t, "bridle")
			if c.change != nil {
				v = c.change(v)
			}
			f, troubles := compute.Facts(decode(t, v.text()), c.cond)
			if len(troubles) > 0 {
				t.Fatal(troubles)
			}
			if got := figure(t, f, "part/hook/1/S1", "rated_load_n"); !alike(got, c.oneLegT*tonne, 1e-6) {
				t.Errorf("one leg %g N, want %g t", got, c.oneLegT)
			}
			if got := figure(t, f, "part/hook/B1", "rated_load_n"); !alike(got, c.assemblyT*tonne, 1e-6) {
				t.Errorf("all legs %g N, want %g t", got, c.assemblyT)
			}
		})
	}
}

// park hangs up the leg of that index, and takes its attachment and fitting out.
func park(v tree, leg int) tree {
	legs := v["rigging"].([]any)[0].(map[string]any)["legs"].([]any)
	l := legs[leg].(map[string]any)
	l["down"] = l["down"].([]any)[:1]
	l["end"] = map[string]any{"kind": "parked"}
	return v
}

func parkTwo(v tree) tree { return park(park(v, 1), 3) }

// TestBridleNotRated: a tag from which no rating follows says what is missing.
func TestBridleNotRated(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(tree) tree
		want   string
	}{
		{"not said what for", func(v tree) tree { return v.drop("gear/0/tag/rated_for") }, "B1's tag does not say what its rated load is for"},
		{"no angle", func(v tree) tree { return v.drop("gear/0/tag/angle_from_horizontal") }, "B1's tag shows no angle"},
		{"illegible", func(v tree) tree { return v.set("gear/0/tag/condition", "illegible") }, "B1's tag is illegible"},
		{"no tag", func(v tree) tree { return v.drop("gear/0/tag") }, "no tag of B1 is recorded"},
		{"one leg at an angle", func(v tree) tree { return v.set("gear/0/tag/rated_for", "one_leg") }, "B1's tag rates one leg at 45 deg from horizontal, from which no leg's rated load follows"},
		{"an angle that no leg has", func(v tree) tree { return v.set("gear/0/tag/angle_from_horizontal", "120 deg") }, "B1's tag rates assembly at 120 deg from horizontal, from which no leg's rated load follows"},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := c.change(rulesBase(t, "bridle")).facts(t)
			for _, key := range []string{"part/hook/1/S1", "part/hook/B1"} {
				if got := labels(lacks(t, f, key, "rated_load_n")); got != c.want {
					t.Errorf("%s waits for %q, want %q", key, got, c.want)
				}
				lacks(t, f, key, "used_ratio")
			}
		})
	}
}

// TestBridleCarries: the master link sees all, the intermediate links what
// their two legs pull together, the bridle what hangs from its legs.
func TestBridleCarries(t *testing.T) {
	f := rulesBase(t, "bridle").facts(t)
	const loadN = 4040 * gravity
	fittings := 4 * 0.7 * gravity
	slings := 4 * 4.0 * gravity
	for key, want := range map[string]float64{
		"part/hook/ML1": loadN + fittings + slings + (5+2*2)*gravity,
		"part/hook/B1":  loadN + fittings,
		// Three of four legs count, so that one side comes to 2/3 of the weight
		// as its vertical part; the pair leans by atan(1.5/height) toward it.
		"part/hook/IL1": 2.0/3*loadN/math.Cos(math.Atan(1.5/hookHeight())) + fittings/2 + slings/2 + 2*gravity,
	} {
		if got := figure(t, f, key, "load_n"); !alike(got, want, 1e-3) {
			t.Errorf("%s carries %g N, want %g", key, got, want)
		}
	}
	// However the four share, each side carries half the weight.
	bound := figure(t, f, "part/hook/IL1", "load_bound_n")
	want := 0.5*loadN/math.Cos(math.Atan(1.5/hookHeight())) + fittings/2 + slings/2 + 2*gravity
	if bound < want*(1-1e-3) || bound > want*1.3 {
		t.Errorf("the bound of an intermediate link is %g N, want about %g", bound, want)
	}
}

// hookHeight is that of the master link's lower end above the attachments of
// the base, which lie 3 by 2 m apart.
func hookHeight() float64 {
	// Legs of 4 m sling, 0.06 m shackle and 0.15 m link, stretched by little.
	return math.Sqrt(4.21*4.21 - (1.5*1.5 + 1))
}

// TestParkedLegs: they carry nothing, hang along in the weight, and are no legs.
func TestParkedLegs(t *testing.T) {
	f := park(rulesBase(t, "bridle"), 3).facts(t)
	if got := len(f.Document.Legs); got != 3 {
		t.Fatalf("%d legs", got)
	}
	all := rulesBase(t, "bridle").facts(t)
	gone := figure(t, all, "hook/hook", "load_n") - figure(t, f, "hook/hook", "load_n")
	if !alike(gone, 0.7*gravity, 1e-4) { // only the shackle is taken off
		t.Errorf("the hook carries %g N less", gone)
	}
	for _, p := range f.Document.Parts {
		if p.ID == "S4" {
			t.Errorf("a parked leg is a part: %+v", p)
		}
	}
	if v, _ := find(t, f, "gear/S4").Field("uses"); v != 1 {
		t.Errorf("a parked leg is used %v times", v)
	}
}

// TestBandOfBridle: in Europe a bridle is not used flatter than its band.
func TestBandOfBridle(t *testing.T) {
	v := rulesBase(t, "bridle")
	f, _ := compute.Facts(decode(t, v.text()), europe())
	if got := figure(t, f, "leg/hook/1", "band_least_from_horizontal_deg"); got != 45 {
		t.Errorf("band to %g deg", got)
	}
	f, _ = compute.Facts(decode(t, v.set("gear/0/tag/angle_from_horizontal", "30 deg").text()), europe())
	if got := figure(t, f, "leg/hook/1", "band_least_from_horizontal_deg"); got != 30 {
		t.Errorf("band to %g deg", got)
	}
	if v, _ := find(t, rulesBase(t, "bridle").facts(t), "leg/hook/1").Field("rated_by_band"); v != false {
		t.Error("a band where statics rates")
	}
}

// TestTagOfOneSlingForABridle: such a tag on a sling by itself rates nothing.
func TestTagOfOneSlingForABridle(t *testing.T) {
	f := rulesBase(t, "two_legs").set("gear/0/tag/rated_for", "assembly").facts(t)
	if got := labels(lacks(t, f, "part/hook/1/S1", "rated_load_n")); !strings.Contains(got, "describe the whole as a bridle") {
		t.Error(got)
	}
}

// TestLegsWhenEven: three legs count where all carry alike, two where not.
func TestLegsWhenEven(t *testing.T) {
	even, _ := compute.Facts(decode(t, rulesBase(t, "four_legs").text()), europe())
	if got := even.Document.Lifts[0].LegsThatCount; got != 3 {
		t.Errorf("%d of four even legs count", got)
	}
	uneven, _ := compute.Facts(decode(t, rulesBase(t, "four_legs").set("load/center_of_gravity/x", "1.3 m").text()), europe())
	if got := uneven.Document.Lifts[0].LegsThatCount; got != 2 {
		t.Errorf("%d of four uneven legs count", got)
	}
	if a, b := figure(t, even, "leg/hook/1", "tension_judged_n"), figure(t, uneven, "leg/hook/1", "tension_judged_n"); b < 1.3*a {
		t.Errorf("judged with %g N even, %g N uneven", a, b)
	}
}
