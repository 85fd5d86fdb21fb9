package compute_test

import "testing"

// TestSteelAgainstChain: links and hooks are of the grade of their chain or above
// (29 CFR 1910.184(e)(2), EN 818-4, both from memory).
func TestSteelAgainstChain(t *testing.T) {
	hook := func(steel string) map[string]any {
		h := map[string]any{"id": "K1", "kind": "hook", "rated_load": "2 t", "inside_length": "100 mm"}
		if steel != "" {
			h["steel"] = steel
		}
		return h
	}
	for _, c := range []struct{ chain, steel, want, held string }{
		{"80", "grade_8", "as_good", "80"},
		{"80", "alloy", "as_good", "80"},
		{"80", "carbon", "weaker", "80"},
		{"80", "", "not_given", "80"},
		{"100", "grade_8", "weaker", "100"},
		{"100", "grade_10", "as_good", "100"},
		{"120", "grade_10", "weaker", "120"},
		{"120", "grade_12", "as_good", "120"},
		{"70", "carbon", "no_chain", "none"}, // which is made for no lifting at all
	} {
		f, _ := rulesBase(t, "chain").set("gear/0/grade", c.chain).set("gear/2", hook(c.steel)).compute(t)
		says(t, f, "gear/K1", "steel_against_chain", c.want)
		says(t, f, "gear/K1", "chain_held", c.held)
		says(t, f, "gear/K2", "steel_against_chain", "no_chain") // a shackle has a mark of its own
	}
	f, _ := rulesBase(t, "bridle").compute(t)
	says(t, f, "gear/ML1", "steel_against_chain", "no_chain")
	says(t, f, "gear/B1", "of_chain", false)
}
