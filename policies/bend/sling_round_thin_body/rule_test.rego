package liftlint.rules.bend.sling_round_thin_body_test

import data.liftlint.rules.bend.sling_round_thin_body.finding

found(on, ratio) := got if {
	got := finding with input as {"hitches": [{"key": "hitch/hook/1", "on": on, "body_over_rope_ratio": ratio}]}
}

test_breaks_round_a_bar if found("round_body", 0.999) == {"hitch/hook/1"}

test_breaks_through_a_plate if found("point", 0.999) == {"hitch/hook/1"}

test_breaks_over_a_sheave if found("sheave", 0.999) == {"hitch/hook/1"}

test_meets_at_its_own_diameter if found("round_body", 1) == set()

test_edges_are_another_rule if found("body_with_corners", 0.1) == set()

test_width_unknown if finding == set() with input as {"hitches": [{"key": "hitch/hook/1", "on": "round_body"}]}
