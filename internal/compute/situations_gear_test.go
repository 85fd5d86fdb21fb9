package compute_test

import "testing"

// gearSituations are plans with bridles and ropes of every sort. What only
// leaves something out is drawn at random from these.
func gearSituations(t testing.TB) map[string]func() tree {
	bridle := func() tree { return rulesBase(t, "bridle") }
	oneLeg := func() tree {
		return bridle().set("gear/0/tag/rated_for", "one_leg").set("gear/0/tag/angle_from_horizontal", "90 deg").set("gear/0/tag/rated_load", "3.7 t")
	}
	return map[string]func() tree{
		"bridle rated as a whole":       bridle,
		"bridle rated for one leg":      oneLeg,
		"bridle with a parked leg":      func() tree { return park(bridle(), 3) },
		"bridle of two legs, others up": func() tree { return parkTwo(oneLeg()) },
		"bridle with a leg tagged by itself": func() tree {
			return bridle().set("gear/4/tag", map[string]any{"condition": "legible", "rated_load": "3.7 t", "hitch": "vertical"}).
				set("gear/5/inspection", map[string]any{"date": "2026-06-01"})
		},
		"bridle that hangs idle": func() tree { return withIdleBridle(rulesBase(t, "two_legs")) },
		"rope of no table":       func() tree { return rulesBase(t, "two_legs").set("gear/0/class", "8x19").set("gear/0/grade", "eips") },
		"short rope": func() tree {
			return rulesBase(t, "two_legs").set("gear/0/length", "1.2 m").set("gear/0/eyes/upper/length", "700 mm")
		},
		"hot, with tucked eyes": func() tree { return hotAndTucked(rulesBase(t, "two_legs")) },
		"hooks instead of pins": func() tree { return hooked(bridle()) },
		"bridle of unlike ropes": func() tree {
			return bridle().set("gear/5/diameter", "20 mm").set("gear/6/class", "8x19").set("gear/6/grade", "eips")
		},
	}
}

// add puts another item into the gear.
func (v tree) add(item map[string]any) tree {
	v["gear"] = append(v["gear"].([]any), item)
	return v
}

// withIdleBridle adds a bridle that no leg uses.
func withIdleBridle(v tree) tree {
	return v.add(map[string]any{"id": "B9", "kind": "bridle", "master": "ML9", "groups": []any{map[string]any{"legs": []any{"S9"}}},
		"tag": map[string]any{"condition": "legible", "rated_load": "3 t", "rated_for": "one_leg", "angle_from_horizontal": "90 deg"}}).
		add(map[string]any{"id": "ML9", "kind": "master_link"}).
		add(map[string]any{"id": "S9", "kind": "wire_rope_sling"})
}

// hotAndTucked makes one sling hand-tucked, beside a hot place.
func hotAndTucked(v tree) tree {
	v["lift"].(map[string]any)["temperature"] = map[string]any{"lowest": "-5 C", "highest": "90 C"}
	tucked := map[string]any{"kind": "hand_tucked", "length": "300 mm", "splice_length": "400 mm"}
	return v.set("gear/0/eyes", map[string]any{"upper": tucked, "lower": tucked})
}

// hooked puts a hook in the place of the first shackle, and nothing in that of
// the second.
func hooked(v tree) tree {
	v.set("gear/8", map[string]any{"id": "K1", "kind": "hook", "rated_load": "4 t", "inside_length": "60 mm", "body_width": "20 mm"})
	return v.set("rigging/0/legs/1/down", []any{"S2"})
}
