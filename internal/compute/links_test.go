package compute_test

import (
	"math"
	"testing"
)

// shortBridle is the base bridle with long links and short legs, its links
// taking the legs to points 3 m apart.
func shortBridle(t *testing.T) tree {
	v := rulesBase(t, "bridle")
	gear := v["gear"].([]any)
	gear[0].(map[string]any)["groups"] = []any{
		map[string]any{"link": "IL1", "legs": []any{"S1", "S2"}},
		map[string]any{"link": "IL2", "legs": []any{"S3", "S4"}},
	}
	for _, i := range []int{2, 3} {
		gear[i].(map[string]any)["inside_length"] = "300 mm"
	}
	for _, i := range []int{4, 5, 6, 7} {
		gear[i].(map[string]any)["length"] = "1.85 m"
		gear[i].(map[string]any)["diameter"] = "60 mm" // it hardly stretches
	}
	return v
}

// TestLinkHangsInTheLineOfItsLegs: worked by hand. Each link hangs in the plane
// of the hook and the middle between its two points, which lie 3 m apart and
// 1 m to the side. With the hook at h above them the link's lower end lies at
// 0.3 (1, h) / sqrt(1 + h^2) from the hook, and the leg from there to a point has
// 1.91 m: 1.5^2 + (sqrt(1 + h^2) - 0.3)^2 = 1.91^2.
func TestLinkHangsInTheLineOfItsLegs(t *testing.T) {
	f, _ := shortBridle(t).compute(t)
	slant := 0.3 + math.Sqrt(1.91*1.91-1.5*1.5)
	h := math.Sqrt(slant*slant - 1)
	rise := h * (slant - 0.3) / slant // of a leg: the link takes the rest of h
	want := math.Asin(rise/1.91) * 180 / math.Pi
	if got := figure(t, f, "leg/hook/1", "angle_from_horizontal_deg"); math.Abs(got-want) > 0.1 {
		t.Errorf("at %g deg from horizontal, by hand %g", got, want)
	}
	pull := 4040 * gravity / 4 / math.Sin(want*math.Pi/180)
	if got := figure(t, f, "leg/hook/1", "tension_n"); !alike(got, pull, 5e-3) {
		t.Errorf("%g N, by hand %g", got, pull)
	}
}

// TestLinkInLine: a link with one leg in use lies in line with it, as ever.
func TestLinkInLine(t *testing.T) {
	f := parkTwo(rulesBase(t, "bridle")).facts(t)
	// S1 and S3 remain, on a link each, to points at both ends of a diagonal.
	want := math.Acos(math.Hypot(1.5, 1)/4.21) * 180 / math.Pi
	if got := figure(t, f, "leg/hook/1", "angle_from_horizontal_deg"); math.Abs(got-want) > 0.2 {
		t.Errorf("at %g deg from horizontal, by hand %g", got, want)
	}
}

// TestParkedLegsTakeRoomAndWeigh: a parked leg hangs in its link with the other.
func TestParkedLegsTakeRoomAndWeigh(t *testing.T) {
	all, some := rulesBase(t, "bridle").facts(t), park(rulesBase(t, "bridle"), 3).facts(t)
	for _, key := range []string{"gather/hook/IL1", "gather/hook/ML1"} {
		if a, b := figure(t, all, key, "needs_m"), figure(t, some, key, "needs_m"); a != b {
			t.Errorf("%s: %g m wide with all legs, %g with one parked", key, a, b)
		}
	}
	a, b := figure(t, all, "part/hook/IL1", "rigging_n"), figure(t, some, "part/hook/IL1", "rigging_n")
	if gone := 0.7 * gravity; !alike(a-b, gone, 1e-3) { // its shackle is taken off, and the sling stays
		t.Errorf("%g N of rigging with all legs, %g with one parked", a, b)
	}
}

// TestOwnTagAndTheBridles: the lower of the two holds, and the band stays.
func TestOwnTagAndTheBridles(t *testing.T) {
	tag := func(rated string) tree {
		v := rulesBase(t, "bridle")
		v["gear"].([]any)[4].(map[string]any)["tag"] = map[string]any{"condition": "legible", "rated_load": rated, "hitch": "vertical"}
		return v
	}
	const key, field = "part/hook/1/S1", "rated_load_n"
	whole := figure(t, rulesBase(t, "bridle").facts(t), key, field)
	if got := figure(t, tag("9 t").facts(t), key, field); got != whole {
		t.Errorf("a higher tag of its own raises it from %g to %g N", whole, got)
	}
	if got := figure(t, tag("1 t").facts(t), key, field); !alike(got, 1000*gravity, 1e-6) {
		t.Errorf("a lower tag of its own gives %g N", got)
	}
	if names, _ := find(t, tag("9 t").facts(t), "leg/hook/1").Field("tag_names_angle"); names != true {
		t.Error("a tag of its own takes the bridle's angle away")
	}
}

// TestFlatterThanTheTag: a bridle that hangs flatter than its tag's angle is
// rated less as a whole, by the sines.
func TestFlatterThanTheTag(t *testing.T) {
	f := rulesBase(t, "bridle").set("gear/0/tag/angle_from_horizontal", "70 deg").facts(t)
	b := figure(t, f, "leg/hook/1", "angle_from_horizontal_deg")
	want := 7800 * gravity * math.Sin(b*math.Pi/180) / math.Sin(70*math.Pi/180)
	if got := figure(t, f, "part/hook/B1", "rated_load_n"); !alike(got, want, 1e-3) {
		t.Errorf("%g N, want %g", got, want)
	}
}
