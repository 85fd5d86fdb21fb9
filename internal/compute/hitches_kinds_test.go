package compute_test

import "testing"

// TestPinOfAChoke, and what softens edges, as the plan has them.
func TestPinOfAChoke(t *testing.T) {
	of := func(end string) string {
		return changed(t, choked, "PITCH", "0", "STATION", "4", "EYE", "300",
			"gear:\n", "gear:\n  - {id: K, kind: shackle, inside_length: 60 mm}\n", "down: [C], end: {kind: choke,", "down: [C, K], end: {kind: choke,"+end)
	}
	for end, want := range map[string]string{" pin_in: eye,": "eye", " pin_in: running_part,": "running_part", "": "not_given"} {
		f, _ := computeText(t, of(end))
		says(t, f, "hitch/hook/1", "pin_in", want)
	}
	f, _ := computeText(t, changed(t, choked, "PITCH", "0", "STATION", "4", "EYE", "300"))
	says(t, f, "hitch/hook/1", "pin_in", "none")
	says(t, f, "hitch/hook/1", "softener_secured", "none")
	says(t, f, "hitch/hook/1", "sling_kind", "wire_rope_sling")
	for given, want := range map[string]string{"softened: true, ": "not_given", "softened: true, softener_secured: true, ": "yes", "softened: true, softener_secured: false, ": "no"} {
		f, _ := computeText(t, changed(t, inBaskets, "body: pipe", given+"body: pipe"))
		says(t, f, "hitch/hook/1", "softener_secured", want)
	}
}

// TestEdgesThatAreSharp: under one diameter for rope, three thicknesses for fabric,
// six for mesh.
func TestEdgesThatAreSharp(t *testing.T) {
	for _, c := range []struct {
		sling, radius string
		want          bool
	}{
		{"", "19 mm", true}, {"", "20 mm", false},
		{ofChain, "9 mm", true}, {ofChain, "10 mm", false},
		{ofWeb, "23 mm", true}, {ofWeb, "24 mm", false},
		{ofMesh, "59 mm", true}, {ofMesh, "60 mm", false},
	} {
		v := parse(t, changed(t, inBaskets, "kind: round, axis: along", "kind: box, axis: along", "diameter: 600 mm", "width: 600 mm, height: 600 mm, edge_radius: "+c.radius))
		if c.sling != "" {
			v.withSlings(t, c.sling)
		}
		f, _ := v.compute(t)
		if got, _ := find(t, f, "hitch/hook/1").Field("edge_sharp"); got != c.want {
			t.Errorf("%s over %s: %v", c.sling, c.radius, got)
		}
	}
}

// TestLegsUnlikeOfOneSupport: a tail of other rope is no unlike leg of the head.
func TestLegsUnlikeOfOneSupport(t *testing.T) {
	unlike := func(v tree) string {
		f, _ := v.compute(t)
		return f.Document.Lifts[0].LegsUnlike.How
	}
	tail := parse(t, changed(t, turnedUp))
	for i, g := range tail["gear"].([]any) {
		if item := g.(map[string]any); item["id"] == "S2" {
			tail.set("gear/"+string(rune('0'+i))+"/diameter", "30 mm")
		}
	}
	if got := unlike(tail); got != "" {
		t.Errorf("the tail is held against the head: %s", got)
	}
	if got := unlike(rulesBase(t, "two_legs").set("gear/1/diameter", "16 mm")); got != "S1 and S2 are unlike in diameter" {
		t.Errorf("two diameters on one hook: %q", got)
	}
	if got := unlike(rulesBase(t, "two_legs").set("gear/1/core", "fiber")); got != "S1 and S2 are unlike in core, iwrc and fiber" {
		t.Errorf("two cores on one hook: %q", got)
	}
	chain := map[string]any(parse(t, "{id: S2, kind: chain_sling, length: 2.5 m, size: 10 mm}"))
	if got := unlike(rulesBase(t, "two_legs").set("gear/1", chain)); got != "S1 and S2 are unlike in kind, wire rope sling and chain sling" {
		t.Errorf("rope and chain on one hook: %q", got)
	}
	f, _ := rulesBase(t, "two_legs").set("gear/1/diameter", "16 mm").compute(t)
	if got := f.Document.Lifts[0].LegsUnlike.At; got != "#/gear/1" {
		t.Errorf("found at %s", got)
	}
}

// TestDesignOfABeam as the plan tells it, and the span of its outer points.
func TestDesignOfABeam(t *testing.T) {
	f := arrangement(t, underSpreader)
	for field, want := range map[string]any{"category_given": false, "proof_test_given": false, "proof_test_dated": false, "span_rated_for_given": false} {
		says(t, f, "beam/SB", field, want)
	}
	near(t, "span", figure(t, f, "beam/SB", "span_m"), 4, 1e-9)
	f = arrangement(t, underSpreader, "{id: bl, x: -2 m, y: 0 m, z: 0 m}", "{id: bl, x: -2 m, y: 0 m, z: -0.3 m}")
	near(t, "span with holes at two heights", figure(t, f, "beam/SB", "span_m"), 4, 1e-9)
	f = arrangement(t, underSpreader, "rated_load: 10 t, rated_comp", "category: B, proof_test: {load: 125 %, date: 2026-03-01}, span_rated_for: 5 m, rated_load: 10 t, rated_comp")
	for field, want := range map[string]any{"category_given": true, "proof_test_given": true, "proof_test_dated": true, "span_rated_for_given": true} {
		says(t, f, "beam/SB", field, want)
	}
	near(t, "proof test", figure(t, f, "beam/SB", "proof_test_ratio"), 1.25, 1e-9)
	near(t, "span over rated", figure(t, f, "beam/SB", "span_over_rated_ratio"), 0.8, 1e-9)
}

// TestDayOfAProofTest: one on the day of the lift has been made.
func TestDayOfAProofTest(t *testing.T) {
	for date, after := range map[string]bool{"2026-12-03": false, "2026-12-04": false, "2026-12-05": true} {
		f, _ := rulesBase(t, "spreader").set("gear/0/proof_test/date", date).compute(t)
		says(t, f, "beam/SB1", "proof_test_date", date)
		says(t, f, "beam/SB1", "proof_test_after_lift", after)
	}
	f, _ := rulesBase(t, "spreader").drop("lift/date").compute(t)
	if got := labels(lacks(t, f, "beam/SB1", "proof_test_after_lift")); got != "the day of the lift `date` at #/lift" {
		t.Errorf("waits for %q", got)
	}
}

// TestWhatTagsAndChainsTell: the grade of a chain, and for which hitches a tag has a
// rated load.
func TestWhatTagsAndChainsTell(t *testing.T) {
	f, _ := rulesBase(t, "chain").compute(t)
	says(t, f, "gear/C1", "chain_grade", "80")
	says(t, f, "gear/K1", "chain_grade", "none")
	says(t, f, "gear/C1", "tag_names_choker_rating", false)
	says(t, f, "gear/C1", "tag_names_design_factor", false)
	f, _ = rulesBase(t, "web").compute(t)
	near(t, "design factor of webbing", figure(t, f, "gear/W1", "tag.design_factor"), 7, 0)
	f, _ = rulesBase(t, "chain").drop("gear/0/grade").compute(t)
	says(t, f, "gear/C1", "chain_grade", "not_given")
	f, _ = rulesBase(t, "pipe").compute(t)
	says(t, f, "gear/S1", "tag_names_choker_rating", true)
	says(t, f, "gear/S1", "tag_names_basket_rating", true)
	says(t, f, "gear/ML1", "tag_names_basket_rating", false)
}
