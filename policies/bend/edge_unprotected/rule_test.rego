package liftlint.rules.bend.edge_unprotected_test

import data.liftlint.rules.bend.edge_unprotected.finding

grades(kind, on, softened, ratio) := got if {
	got := {f.grade | some f in finding} with input as {"hitches": [{
		"key": "hitch/hook/1",
		"sling_kind": kind,
		"on": on,
		"edges_protected": softened,
		"body_over_rope_ratio": ratio,
	}]}
}

bare(kind, ratio) := grades(kind, "body_with_corners", false, ratio)

test_breaks_on_an_edge_of_less_than_a_diameter if bare("wire_rope_sling", 1.999) == {"rope"}

test_breaks_with_a_grommet if bare("grommet", 1.999) == {"rope"}

test_breaks_with_chain if bare("chain_sling", 1.999) == {"chain"}

test_breaks_with_webbing if bare("web_sling", 5.999) == {"fabric"}

test_breaks_with_a_round_sling if bare("round_sling", 5.999) == {"fabric"}

test_meets_at_a_radius_of_one_diameter if bare("wire_rope_sling", 2) == set()

test_meets_with_chain_at_a_radius_of_its_size if bare("chain_sling", 2) == set()

test_meets_with_webbing_at_three_thicknesses if bare("web_sling", 6) == set()

test_breaks_with_mesh if bare("mesh_sling", 11.999) == {"mesh"}

test_meets_with_mesh_at_six_thicknesses if bare("mesh_sling", 12) == set()

test_softened if grades("wire_rope_sling", "body_with_corners", true, 0.1) == set()

test_no_edges if grades("wire_rope_sling", "round_body", false, 1.5) == set()

test_radius_unknown if {
	finding == set() with input as {"hitches": [{"key": "hitch/hook/1", "sling_kind": "web_sling", "on": "body_with_corners", "edges_protected": false}]}
}
