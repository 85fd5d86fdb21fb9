package liftlint.rules.bend.sling_round_thin_body_test

import data.liftlint.rules.bend.sling_round_thin_body.finding

grades(kind, on, ratio) := got if {
	got := {f.grade | some f in finding} with input as {"hitches": [{"key": "hitch/hook/1", "sling_kind": kind, "on": on, "body_over_rope_ratio": ratio}]}
}

test_breaks_round_a_bar if grades("wire_rope_sling", "round_body", 0.999) == {"rope"}

test_breaks_through_a_plate if grades("wire_rope_sling", "point", 0.999) == {"rope"}

test_breaks_over_a_sheave if grades("wire_rope_sling", "sheave", 0.999) == {"rope"}

test_breaks_with_a_grommet if grades("grommet", "round_body", 0.999) == {"rope"}

test_breaks_with_chain if grades("chain_sling", "round_body", 1.999) == {"chain"}

test_breaks_with_webbing if grades("web_sling", "round_body", 5.999) == {"fabric"}

test_breaks_with_a_round_sling_through_a_plate if grades("round_sling", "point", 5.999) == {"fabric"}

test_breaks_with_chain_once if grades("chain_sling", "round_body", 0.9) == {"chain"}

test_breaks_with_webbing_once if grades("web_sling", "round_body", 0.9) == {"fabric"}

test_meets_at_its_own_diameter if grades("wire_rope_sling", "round_body", 1) == set()

test_meets_with_chain_at_twice_its_size if grades("chain_sling", "round_body", 2) == set()

test_meets_with_webbing_at_six_thicknesses if grades("web_sling", "round_body", 6) == set()

test_no_source_tells_of_mesh if grades("mesh_sling", "round_body", 0.1) == set()

test_edges_are_another_rule if grades("wire_rope_sling", "body_with_corners", 0.1) == set()

test_width_unknown if finding == set() with input as {"hitches": [{"key": "hitch/hook/1", "sling_kind": "wire_rope_sling", "on": "round_body"}]}
