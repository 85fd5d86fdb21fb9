package compute_test

import (
	"strconv"
	"strings"
	"testing"
)

// TestSlingsRatedByTheirTags: until it is known what a hitch takes of a sling of
// another kind, nothing is said of what it may carry, in no hitch.
func TestSlingsRatedByTheirTags(t *testing.T) {
	text := changed(t, inBaskets, "kind: wire_rope_sling, core: iwrc, diameter: 20 mm", "kind: web_sling")
	f, _ := computeText(t, text)
	if got, told := why(t, f, "part/hook/1/W1"); !strings.Contains(got, "W1 may carry is not judged: it is a web sling") || told {
		t.Errorf("%q, told %v", got, told)
	}
}

// TestBodiesOfSeveralRopes: the tables of single ropes say nothing of them, though
// diameter, class, core and grade would fit.
func TestBodiesOfSeveralRopes(t *testing.T) {
	for body, known := range map[string]bool{"single_part": true, "multi_part": false, "cable_laid": false} {
		f, _ := rulesBase(t, "two_legs").set("gear/0/body", body).compute(t)
		if _, ok := find(t, f, "gear/S1").Field("rated_over_believable_ratio"); ok != known {
			t.Errorf("%s: held against one rope: %v", body, ok)
		}
	}
}

// TestSwivelIsALowerFitting as all but slings are that stand in legs.
func TestSwivelIsALowerFitting(t *testing.T) {
	v := rulesBase(t, "bridle")
	list, down := v["gear"].([]any), v["rigging"].([]any)[0].(map[string]any)["legs"].([]any)[0].(map[string]any)["down"].([]any)
	v.set("gear", append(list, parse(t, "{id: SW1, kind: swivel, length: 100 mm, rated_load: 1 t}"))).
		set("rigging/0/legs/0/down", append([]any{down[0], "SW1"}, down[1:]...))
	f, _ := v.compute(t)
	if got, _ := find(t, f, "bridle/B1").Field("lower_fittings"); got != 5 {
		t.Errorf("%v lower fittings, of four shackles and a swivel", got)
	}
	if got, _ := find(t, f, "bridle/B1").Field("weakest_lower_fitting"); got != "SW1" {
		t.Errorf("the weakest is %v", got)
	}
}

// TestBridleOfChain: what its tag rates one leg for follows as of rope, its legs'
// lengths are compared in diameters of their chain, and no rope is asked for.
func TestBridleOfChain(t *testing.T) {
	v := rulesBase(t, "bridle")
	for i, g := range v["gear"].([]any) {
		if item := g.(map[string]any); item["kind"] == "wire_rope_sling" {
			v.set("gear/"+strconv.Itoa(i), map[string]any{"id": item["id"], "kind": "chain_sling", "length": "3 m", "size": "10 mm"})
		}
	}
	rope, _ := rulesBase(t, "bridle").compute(t)
	f, _ := v.compute(t)
	for _, key := range []string{"one_leg_rated_n", "assembly_rated_n"} {
		near(t, key, figure(t, f, "bridle/B1", key), figure(t, rope, "bridle/B1", key), 1e-12)
	}
	near(t, "spread", figure(t, f, "bridle/B1", "length_spread_d"), 0, 1e-12)
	if got, _ := find(t, f, "gear/B1").Field("rated_against"); got != "nothing" {
		t.Errorf("held against %v", got)
	}
	f, _ = v.drop("gear/4/size").compute(t)
	if got := labels(lacks(t, f, "bridle/B1", "length_spread_d")); got != "S1's size `size` at #/gear/4" {
		t.Errorf("it waits for %q", got)
	}
}

// TestSharesOfChain: how four legs of chain share waits for their stretch; two legs
// share by statics.
func TestSharesOfChain(t *testing.T) {
	chained := func(base string) tree {
		v := rulesBase(t, base)
		for i, g := range v["gear"].([]any) {
			if item := g.(map[string]any); item["kind"] == "wire_rope_sling" {
				v.set("gear/"+strconv.Itoa(i), map[string]any{"id": item["id"], "kind": "chain_sling", "length": item["length"], "size": "10 mm"})
			}
		}
		return v
	}
	f, _ := chained("four_legs").compute(t)
	if got := labels(lacks(t, f, "leg/hook/1", "tension_n")); !strings.Contains(got, "S1's stretch under load, which is worked out for wire rope only") {
		t.Errorf("it waits for %q", got)
	}
	f, _ = chained("two_legs").compute(t)
	figure(t, f, "leg/hook/1", "tension_n")
}
