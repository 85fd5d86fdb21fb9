package compute_test

import (
	"strconv"
	"strings"
	"testing"
)

// Slings of each kind, to be put in the place of others; ID stands for theirs.
const (
	ofChain   = "{id: ID, kind: chain_sling, mass: 5 kg, grade: '80', size: 10 mm, LENGTH, tag: {condition: legible, rated_load: 3.2 t, choker_rated_load: 2.5 t, basket_rated_load: 6.4 t, hitch: vertical}}"
	ofWeb     = "{id: ID, kind: web_sling, mass: 2 kg, material: polyester, width: 60 mm, thickness: 8 mm, LENGTH, tag: {condition: legible, rated_load: 2 t, choker_rated_load: 1.6 t, basket_rated_load: 4 t, hitch: vertical}}"
	ofYarns   = "{id: ID, kind: round_sling, mass: 2 kg, material: polyester, width: 50 mm, thickness: 20 mm, LENGTH, tag: {condition: legible, rated_load: 3 t, choker_rated_load: 2.4 t, basket_rated_load: 6 t, hitch: vertical}}"
	ofMesh    = "{id: ID, kind: mesh_sling, mass: 6 kg, width: 100 mm, thickness: 10 mm, LENGTH, tag: {condition: legible, rated_load: 3 t, choker_rated_load: 2.4 t, basket_rated_load: 6 t, hitch: vertical}}"
	braided   = "{id: ID, kind: wire_rope_sling, body: multi_part, parts: 9, class: 6x19, core: iwrc, grade: eips, mass: 6 kg, diameter: 34 mm, component_diameter: 9.5 mm, LENGTH, eyes: {upper: {kind: hand_tucked, length: 300 mm, splice_length: 200 mm}, lower: {kind: hand_tucked, length: 200 mm, splice_length: 200 mm}}, tag: {condition: legible, rated_load: 8 t, choker_rated_load: 6 t, basket_rated_load: 16 t, hitch: vertical}}"
	ofCable   = "{id: ID, kind: wire_rope_sling, body: cable_laid, core: iwrc, mass: 6 kg, diameter: 30 mm, component_diameter: 10 mm, LENGTH, eyes: {upper: {kind: hand_tucked, length: 300 mm, splice_length: 200 mm}, lower: {kind: hand_tucked, length: 200 mm, splice_length: 200 mm}}, tag: {condition: legible, rated_load: 6 t, choker_rated_load: 5 t, basket_rated_load: 12 t, hitch: vertical}}"
	asGrommet = "{id: ID, kind: grommet, laid: cable_laid, core: iwrc, mass: 9 kg, diameter: 40 mm, component_diameter: 13 mm, circumference: TWICE, splice_at: 1 m, sleeve: none, breaking_load: 400 kN, breaking_load_is_for_parts: 2, tag: {condition: legible, rated_load: 8 t, choker_rated_load: 7 t, basket_rated_load: 16 t, hitch: vertical}}"
)

// kindsOfSling are those by their kind.
var kindsOfSling = map[string]string{"chain": ofChain, "webbing": ofWeb, "yarns": ofYarns, "mesh": ofMesh, "a braid": braided, "cable-laid rope": ofCable, "grommets": asGrommet}

// withSlings puts a sling of a kind in the place of each wire rope sling, as long
// as that.
func (v tree) withSlings(t testing.TB, sling string) tree {
	t.Helper()
	for i, g := range v["gear"].([]any) {
		item := g.(map[string]any)
		if item["kind"] != "wire_rope_sling" {
			continue
		}
		length, id := item["length"].(string), item["id"].(string)
		double := length
		if m, err := strconv.ParseFloat(length[:len(length)-2], 64); err == nil {
			double = strconv.FormatFloat(2*m, 'f', -1, 64) + length[len(length)-2:]
		}
		v.set("gear/"+strconv.Itoa(i), map[string]any(parse(t, strings.NewReplacer("ID,", id+",", "LENGTH", "length: "+length, "TWICE", double).Replace(sling))))
	}
	return v
}

// kindSituations are plans with slings of every kind in every hitch, at ordinary
// and at other temperatures, and with all that stands in line with a leg.
func kindSituations(t testing.TB) map[string]func() tree {
	list := map[string]func() tree{}
	add := func(name string, base func() tree) {
		for kind, sling := range kindsOfSling {
			list[name+" of "+kind] = func() tree { return base().withSlings(t, sling) }
		}
	}
	boxed := []string{"kind: round, axis: along", "kind: box, axis: along", "diameter: 600 mm", "width: 600 mm, height: 600 mm, edge_radius: 30 mm"}
	add("two legs", func() tree { return rulesBase(t, "two_legs") })
	add("baskets", func() tree { return parse(t, inBaskets) })
	add("baskets on corners", func() tree { return parse(t, changed(t, inBaskets, boxed...)) })
	add("a choke", func() tree { return parse(t, changed(t, choked, "PITCH", "0", "STATION", "4", "EYE", "300")) })
	add("four hot legs", func() tree { return heated(rulesBase(t, "four_legs"), "120 C") })
	list["a hot choke of chain"] = func() tree {
		return heated(parse(t, changed(t, choked, "PITCH", "0", "STATION", "4", "EYE", "300")).withSlings(t, ofChain), "250 C")
	}
	list["chain over an edge"] = func() tree {
		return parse(t, strings.Replace(changed(t, inBaskets, boxed...), "edge_radius: 30 mm", "edge_radius: 15 mm", 1)).withSlings(t, ofChain)
	}
	list["eyebolts at an angle"] = func() tree { return eyebolts(t, "[{angle_from_axis: 45 deg, rated_load: 1.2 t}]") }
	list["a bridle flatter than its tag"] = func() tree { return rulesBase(t, "bridle").set("gear/0/tag/angle_from_horizontal", "70 deg") }
	list["two cold legs"] = func() tree { return heated(rulesBase(t, "two_legs"), "20 C").set("lift/temperature/lowest", "-50 C") }
	list["a bridle of chain"] = func() tree {
		return rulesBase(t, "bridle").withSlings(t, changed(t, ofChain, ", tag: {condition: legible, rated_load: 3.2 t, choker_rated_load: 2.5 t, basket_rated_load: 6.4 t, hitch: vertical}", ""))
	}
	list["a hot bridle"] = func() tree { return heated(rulesBase(t, "bridle"), "230 C") }
	list["a swivel and an adjuster"] = func() tree {
		return rulesBase(t, "two_legs").
			add(map[string]any(parse(t, "{id: SW, kind: swivel, length: 100 mm, rated_load: 3 t, turns_under_load: true, upper_opening: 30 mm, lower_opening: 30 mm, lower_pin_diameter: 16 mm, eye_section: 16 mm}"))).
			add(map[string]any(parse(t, "{id: AD, kind: adjuster, length: 300 mm, shortest: 200 mm, longest: 350 mm, rated_load: 3 t, upper_opening: 30 mm, lower_opening: 30 mm, eye_section: 16 mm}"))).
			set("rigging/0/legs/0/down", []any{"SW", "S1", "K1"}).set("rigging/0/legs/1/down", []any{"S2", "AD", "K2"})
	}
	list["a lifting device"] = func() tree {
		return parse(t, changed(t, onePin, "CENTER", "0.1", "kind: lifting_beam", "kind: lifting_device, made_for: panels, category: B, proof_test: {load: 125 %, date: 2026-03-01}"))
	}
	return list
}

// heated gives the gear a temperature.
func heated(v tree, highest string) tree {
	v["lift"].(map[string]any)["temperature"] = map[string]any{"lowest": "-5 C", "highest": highest}
	return v
}
