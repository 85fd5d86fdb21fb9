package compute_test

import (
	"math"
	"testing"
)

// TestGrommetOnItsBearings: 5 m of a body of 40 mm are 125 d (96 are asked for, 29
// CFR 1910.184(f)(2)); its splice, 1 m below the upper bearing, is 1 m from it and
// 1.5 m from the lower one, and 0.25 m from the next where it lies double, four
// times 1.25 m; it bends round a hook of 80 mm and a shackle's bow or pin.
func TestGrommetOnItsBearings(t *testing.T) {
	v := rulesBase(t, "two_legs").withSlings(t, asGrommet)
	f, _ := v.compute(t)
	near(t, "circumference", figure(t, f, "grommet/S1", "circumference_d"), 125, 1e-9)
	near(t, "splice", figure(t, f, "grommet/S1", "splice_from_bearing_d"), 25, 1e-9)
	near(t, "upper bend", figure(t, f, "grommet/S1", "upper_bend_d"), 2, 1e-9)
	near(t, "lower bend", figure(t, f, "grommet/S1", "lower_bend_d"), 16.0/40, 1e-9)
	says(t, f, "grommet/S1", "lower_on", "K1's bow")
	says(t, f, "grommet/S1", "laid", "cable_laid")
	f, _ = v.set("rigging/0/legs/0/doubled", true).compute(t)
	near(t, "splice, doubled", figure(t, f, "grommet/S1", "splice_from_bearing_d"), 0.25/0.04, 1e-9)
	f, _ = v.drop("gear/0/circumference").compute(t)
	if got := labels(lacks(t, f, "grommet/S1", "splice_from_bearing_d")); got != "S1's circumference `circumference` at #/gear/0" {
		t.Errorf("waits for %q", got)
	}
}

// TestBodyOfSeveralParts: 9 parts of 9.5 mm make 3.61 x 9.5 = 34.3 mm (derived), 34
// mm agree and 44 mm do not; 40 components of plain rope are asked for (29 CFR
// 1910.184(f)(2)), here in diameters of the body.
func TestBodyOfSeveralParts(t *testing.T) {
	f, _ := rulesBase(t, "two_legs").withSlings(t, braided).compute(t)
	says(t, f, "rope/S1", "body", "multi_part")
	says(t, f, "rope/S1", "body_over_components_agrees", "yes")
	near(t, "least clear rope", figure(t, f, "rope/S1", "least_clear_rope_d"), 40*9.5/34, 1e-6)
	f, _ = rulesBase(t, "two_legs").withSlings(t, changed(t, braided, "diameter: 34 mm, component", "diameter: 44 mm, component")).compute(t)
	says(t, f, "rope/S1", "body_over_components_agrees", "no")
	f, _ = rulesBase(t, "two_legs").withSlings(t, changed(t, braided, "parts: 9", "parts: 8")).compute(t)
	says(t, f, "rope/S1", "body_over_components_agrees", "lay_up_not_known")
	f, _ = rulesBase(t, "two_legs").withSlings(t, ofCable).compute(t)
	near(t, "cable-laid", figure(t, f, "rope/S1", "least_clear_rope_d"), 10, 1e-9)
}

// TestOpenGrommetsHaveTheLengthTheyNeed: from a hook 3 m over the padeyes and 1 m
// beside, less a shackle of 95 mm, twice that once round (geometry).
func TestOpenGrommetsHaveTheLengthTheyNeed(t *testing.T) {
	f, _ := rulesBase(t, "grommets").set("rigging/0/height_above_datum", "4 m").drop("gear/0/circumference", "gear/1/circumference").compute(t)
	near(t, "circumference", figure(t, f, "grommet/G1", "circumference_d"), 2*(math.Hypot(1, 3)-0.095)/0.02, 1e-6)
}

// TestCableLaidBodies are three ropes thick (geometry): 30 mm of rope of 10 mm, 40 mm
// of rope of 13 mm; not of 15 mm and of 20 mm.
func TestCableLaidBodies(t *testing.T) {
	for _, c := range []struct{ key, sling, from, to string }{
		{"rope/S1", ofCable, "component_diameter: 10 mm", "component_diameter: 15 mm"},
		{"grommet/S1", asGrommet, "component_diameter: 13 mm", "component_diameter: 20 mm"},
	} {
		f, _ := rulesBase(t, "two_legs").withSlings(t, c.sling).compute(t)
		says(t, f, c.key, "body_over_components_agrees", "yes")
		f, _ = rulesBase(t, "two_legs").withSlings(t, changed(t, c.sling, c.from, c.to)).compute(t)
		says(t, f, c.key, "body_over_components_agrees", "no")
		f, _ = rulesBase(t, "two_legs").withSlings(t, changed(t, c.sling, c.from+", ", "")).compute(t)
		if got := labels(lacks(t, f, c.key, "body_over_components_agrees")); got != "S1's component diameter `component_diameter` at #/gear/0" {
			t.Errorf("waits for %q", got)
		}
	}
}

// TestBreakingLoadsOfGrommets over two parts of the strongest rope of 40 mm, K of 0.359
// at 2160 N/mm2 (EN 12385-4, practice). One that is ten times what it is no longer
// vouches for the tag.
func TestBreakingLoadsOfGrommets(t *testing.T) {
	strongest := 2 * 0.359 * 2160 * 40 * 40
	f, _ := rulesBase(t, "two_legs").withSlings(t, asGrommet).compute(t)
	near(t, "as given", figure(t, f, "gear/S1", "breaking_over_strongest_ratio"), 400e3/strongest, 1e-6)
	says(t, f, "gear/S1", "rated_against", "rope_like_it")
	says(t, f, "gear/K1", "breaking_load_given", false)
	f, _ = rulesBase(t, "two_legs").withSlings(t, changed(t, asGrommet, "400 kN", "4000 kN")).compute(t)
	near(t, "ten times that", figure(t, f, "gear/S1", "breaking_over_strongest_ratio"), 4000e3/strongest, 1e-6)
	says(t, f, "gear/S1", "rated_against", "strongest_rope")
	near(t, "its tag", figure(t, f, "gear/S1", "rated_over_strongest_ratio"), 8000*gravity/(strongest/5), 1e-6)
	f, _ = rulesBase(t, "two_legs").withSlings(t, changed(t, asGrommet, ", breaking_load_is_for_parts: 2", "", "diameter: 40 mm, component", "component")).compute(t)
	if got := labels(lacks(t, f, "gear/S1", "breaking_over_strongest_ratio")); got != "whether S1's breaking load is for one of its parts or for both `breaking_load_is_for_parts` at #/gear/0; S1's diameter `diameter` at #/gear/0" {
		t.Errorf("waits for %q", got)
	}
}
