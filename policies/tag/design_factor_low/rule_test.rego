package liftlint.rules.tag.design_factor_low_test

import data.liftlint.rules.tag.design_factor_low.finding

grades(kind, factor) := made(kind, kind == "chain_sling", factor)

made(kind, chain, factor) := got if {
	got := {f.grade | some f in finding} with input as {"gear": [{
		"key": "gear/S1",
		"kind": kind,
		"of_chain": chain,
		"uses": 1,
		"tag_names_design_factor": true,
		"tag": {"state": "legible", "design_factor": factor, "shows": ["design_factor", "size"]},
	}]}
}

test_breaks_under_five if grades("wire_rope_sling", 4.9) == {"rope"}

test_breaks_grommet if grades("grommet", 4.9) == {"rope"}

test_breaks_mesh if grades("mesh_sling", 4.9) == {"rope"}

test_breaks_bridle if grades("bridle", 4.9) == {"rope"}

test_breaks_chain_under_four if grades("chain_sling", 3.9) == {"chain"}

test_breaks_bridle_of_rope_whose_tag_names_a_size if made("bridle", false, 4.5) == {"rope"}

test_breaks_bridle_of_chain if made("bridle", true, 3.9) == {"chain"}

test_breaks_webbing_under_five if grades("web_sling", 4.9) == {"fabric"}

test_breaks_round_sling_under_five if grades("round_sling", 4.9) == {"fabric"}

test_meets_at_five if grades("wire_rope_sling", 5) == set()

test_meets_bridle_at_five if grades("bridle", 5) == set()

test_breaks_bridle_of_rope_once if grades("bridle", 3.9) == {"rope"}

test_meets_chain_at_four if grades("chain_sling", 4) == set()

test_meets_bridle_of_chain_at_four if made("bridle", true, 4) == set()

test_meets_webbing_at_five if grades("web_sling", 5) == set()

test_no_factor_on_the_tag if {
	finding == set() with input as {"gear": [{"key": "gear/S1", "kind": "wire_rope_sling", "uses": 1, "tag_names_design_factor": false, "tag": {"state": "legible", "shows": []}}]}
}

test_a_size_alone_makes_no_bridle if grades("web_sling", 3.9) == {"fabric"}
