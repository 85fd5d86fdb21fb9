package compute_test

import (
	"strconv"
	"strings"
	"testing"

	"liftlint/internal/facts"
)

// TestSlingsRatedByTheirTags: each run of a basket may carry half of what its tag
// says of it, and in a straight leg its rated load: chain and fabric lose nothing
// round a pipe of 600 mm.
func TestSlingsRatedByTheirTags(t *testing.T) {
	const ton = 9806.65
	for kind, rated := range map[string]struct{ straight, basket float64 }{
		"chain": {3.2, 3.2}, "webbing": {2, 2}, "yarns": {3, 3}, "mesh": {3, 3},
	} {
		f, _ := parse(t, inBaskets).withSlings(t, kindsOfSling[kind]).compute(t)
		near(t, kind+" in a basket", figure(t, f, "part/hook/1/W1", "rated_load_n"), rated.basket*ton, 1e-9)
		f, _ = rulesBase(t, "two_legs").withSlings(t, kindsOfSling[kind]).compute(t)
		near(t, kind, figure(t, f, "part/hook/1/S1", "rated_load_n"), rated.straight*ton, 1e-9)
	}
}

// TestEdgesByKind: chain over a radius of 2 sizes keeps 1 - 0.5/sqrt 4 (marine
// lifting guideline, by a glossary of insurers as on D = 2 r); of webbing and yarns
// an edge under three thicknesses is sharp (AS 1353.2, AS 4497.2), and from there on
// none.
func TestEdgesByKind(t *testing.T) {
	const ton = 9806.65
	over := func(kind, radius string) (*facts.Facts, string) {
		text := changed(t, inBaskets, "kind: round, axis: along", "kind: box, axis: along", "diameter: 600 mm", "width: 600 mm, height: 600 mm, edge_radius: "+radius)
		f, _ := parse(t, text).withSlings(t, kindsOfSling[kind]).compute(t)
		return f, "part/hook/1/W1"
	}
	for _, c := range []struct {
		kind, radius string
		want         float64 // t in one run; 0 for none
	}{
		{"chain", "9.9 mm", 0}, {"chain", "20 mm", 3.2 * 0.75}, {"chain", "30 mm", 3.2},
		{"webbing", "23 mm", 0}, {"webbing", "24 mm", 2},
		{"yarns", "59 mm", 0}, {"yarns", "60 mm", 3},
		{"mesh", "59 mm", 0}, {"mesh", "60 mm", 3},
	} {
		f, key := over(c.kind, c.radius)
		if c.want == 0 {
			if lacks(t, f, key, "rated_load_n").Reasons[0].ToldOf == "" { // rules find sharp edges
				t.Errorf("%s over %s is not told elsewhere", c.kind, c.radius)
			}
			continue
		}
		near(t, c.kind+" over "+c.radius, figure(t, f, key, "rated_load_n"), c.want*ton, 1e-9)
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
	if got := f.Document.Bridles[0].WeakFittings.IDs; len(got) != 1 || got[0] != "SW1" {
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
	if got, _ := find(t, f, "gear/B1").Field("rated_against"); got != "strongest_rope" {
		t.Errorf("chain of no grade is held against %v", got)
	}
	f, _ = v.drop("gear/4/size").compute(t)
	if got := labels(lacks(t, f, "bridle/B1", "length_spread_d")); got != "S1's size `size` at #/gear/4" {
		t.Errorf("it waits for %q", got)
	}
}

// TestSharesOfKinds: four legs share by how they stretch, which is known of chain
// and of polyester, and not of mesh; two legs share by statics.
func TestSharesOfKinds(t *testing.T) {
	for kind, known := range map[string]bool{"chain": true, "webbing": true, "yarns": true, "mesh": false, "a braid": true, "cable-laid rope": true} {
		f, _ := rulesBase(t, "four_legs").withSlings(t, kindsOfSling[kind]).compute(t)
		if known {
			figure(t, f, "leg/hook/1", "tension_n")
		} else if got := labels(lacks(t, f, "leg/hook/1", "tension_n")); !strings.Contains(got, "S1's stretch under load, which is not known for its kind or material") {
			t.Errorf("%s: it waits for %q", kind, got)
		}
		f, _ = rulesBase(t, "two_legs").withSlings(t, kindsOfSling[kind]).compute(t)
		figure(t, f, "leg/hook/1", "tension_n")
	}
}

// TestOverloadOfWhatStretches: webbing under more than its rated load stretches by
// more than rope ever does, and is found by its load.
func TestOverloadOfWhatStretches(t *testing.T) {
	v := rulesBase(t, "web").set("load/mass", "4.4 t").set("gear/0/material", "nylon").set("gear/1/material", "nylon")
	f := v.facts(t)
	if used := figure(t, f, "part/hook/1/W1", "used_ratio"); used < 1 || used > 3 {
		t.Errorf("used by %g", used)
	}
}
