package compute_test

import (
	"fmt"
	"testing"
)

// TestBelievableByKind: chain of grade 80 and 3/8 in is rated for 7,100 lb (OSHA
// Guidance on Safe Sling Use Table 1, read); 9 parts of 3/8 in 6x19 EIPS rope of 7.5
// short tons (trade table, practice) for 9 x 7.5 x 0.70 / 5 (ASME B30.9, read in a
// reprint); a grommet of 400 kN for both parts for a fifth of that.
func TestBelievableByKind(t *testing.T) {
	const lb, tonne = 0.45359237 * gravity, 1000 * gravity
	for _, c := range []struct {
		name, sling string
		tagN, most  float64
	}{
		{"chain", changed(t, ofChain, "size: 10 mm", "size: 3/8 in"), 3.2 * tonne, 7100 * lb},
		{"a braid", changed(t, braided, "9.5 mm", "3/8 in"), 8 * tonne, 9 * 15000 * lb * 0.70 / 5},
		{"grommets", asGrommet, 8 * tonne, 400e3 / 5},
	} {
		f, _ := rulesBase(t, "two_legs").withSlings(t, c.sling).compute(t)
		says(t, f, "gear/S1", "rated_against", "rope_like_it")
		near(t, c.name, figure(t, f, "gear/S1", "rated_over_believable_ratio"), c.tagN/c.most, 1e-6)
	}
}

// TestBelievableAtTheStrongest: where no table tells, no sling is taken for weaker
// than it may be; fabric and mesh are held against nothing.
func TestBelievableAtTheStrongest(t *testing.T) {
	for sling, want := range map[string]string{
		changed(t, ofChain, "grade: '80', ", ""): "strongest_rope",
		changed(t, braided, "grade: eips, ", ""): "strongest_rope",
		ofCable:                                  "strongest_rope",
		changed(t, asGrommet, "breaking_load: 400 kN, breaking_load_is_for_parts: 2, ", ""): "strongest_rope",
		ofWeb:   "nothing",
		ofYarns: "nothing",
		ofMesh:  "nothing",
	} {
		f, _ := rulesBase(t, "two_legs").withSlings(t, sling).compute(t)
		says(t, f, "gear/S1", "rated_against", want)
		if want == "strongest_rope" {
			if got := figure(t, f, "gear/S1", "rated_over_strongest_ratio"); got <= 0 || got >= 1.1 {
				t.Errorf("%s: %g of the strongest", sling, got)
			}
		}
	}
	f, _ := rulesBase(t, "two_legs").withSlings(t, changed(t, braided, "parts: 9, ", "")).compute(t)
	if got := labels(lacks(t, f, "gear/S1", "rated_over_strongest_ratio")); got != "S1's number of parts `parts` at #/gear/0" {
		t.Errorf("waits for %q", got)
	}
}

// TestTagsOfOtherHitches over the vertical one: 2.5 of 3.2 t, and twice as much in a
// basket.
func TestTagsOfOtherHitches(t *testing.T) {
	f, _ := rulesBase(t, "two_legs").withSlings(t, ofChain).compute(t)
	near(t, "choker", figure(t, f, "gear/S1", "choker_over_vertical_ratio"), 2.5/3.2, 1e-9)
	near(t, "basket", figure(t, f, "gear/S1", "basket_over_vertical_ratio"), 2, 1e-9)
	f, _ = rulesBase(t, "two_legs").withSlings(t, changed(t, ofChain, "hitch: vertical", "angle_from_horizontal: 60 deg")).compute(t)
	lacks(t, f, "gear/S1", "choker_over_vertical_ratio")
}

// TestFaultsOfEveryKind are seen with the gear.
func TestFaultsOfEveryKind(t *testing.T) {
	for kind, fault := range map[string]string{"chain": "stretched", "webbing": "cut", "yarns": "core_exposed", "mesh": "broken_weld", "grommets": "birdcage", "a braid": "kink"} {
		v := rulesBase(t, "two_legs").withSlings(t, kindsOfSling[kind]).set("gear/0/faults_seen", []any{fault})
		f, _ := v.compute(t)
		got, _ := find(t, f, "gear/S1").Field("faults_seen")
		if list, _ := got.([]string); len(list) != 1 || list[0] != fault {
			t.Errorf("%s: %v", kind, got)
		}
		says(t, f, "gear/S1", "looked_over", true)
		says(t, f, "gear/S2", "looked_over", false)
		meetsSchema(t, f)
	}
}

// TestFaultsOfFittings are seen as those of slings are, and gear of which nothing is
// said is listed, each once, where the first of it stands.
func TestFaultsOfFittings(t *testing.T) {
	v := rulesBase(t, "swivels").set("gear/0/faults_seen", []any{}).set("gear/2/faults_seen", []any{"wrong_pin", "worn"}).set("gear/4/faults_seen", []any{"cracked"})
	f, _ := v.compute(t)
	says(t, f, "gear/K1", "looked_over", true)
	if got := f.Document.Gear[2].FaultsSeen; len(got) != 2 || got[0] != "wrong_pin" {
		t.Errorf("%q", got)
	}
	meetsSchema(t, f)
	if got := f.Document.Lifts[0].NotLookedOver; got.At != "#/gear/6" || fmt.Sprint(got.IDs) != "[K3 S2 K4 SW2 K2]" {
		t.Errorf("not looked over: %+v", got)
	}
	for i := range v["gear"].([]any) {
		v.set(fmt.Sprintf("gear/%d/faults_seen", i), []any{})
	}
	f, _ = v.compute(t)
	if got := f.Document.Lifts[0].NotLookedOver; got.At != "#/lift" || len(got.IDs) != 0 {
		t.Errorf("not looked over: %+v", got)
	}
}
