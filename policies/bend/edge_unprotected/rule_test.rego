package liftlint.rules.bend.edge_unprotected_test

import data.liftlint.rules.bend.edge_unprotected.finding

found(on, softened, ratio) := got if {
	got := finding with input as {"hitches": [{
		"key": "hitch/hook/1",
		"on": on,
		"edges_protected": softened,
		"body_over_rope_ratio": ratio,
	}]}
}

test_breaks_on_an_edge_of_less_than_a_diameter if found("body_with_corners", false, 1.999) == {"hitch/hook/1"}

test_meets_at_a_radius_of_one_diameter if found("body_with_corners", false, 2) == set()

test_softened if found("body_with_corners", true, 0.1) == set()

test_no_edges if found("round_body", false, 1.5) == set()

test_radius_unknown if {
	finding == set() with input as {"hitches": [{"key": "hitch/hook/1", "on": "body_with_corners", "edges_protected": false}]}
}
