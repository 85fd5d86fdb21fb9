package liftlint.rules.tag.useful_fields_missing_test

import data.liftlint.rules.tag.useful_fields_missing.finding

found(item) := got if got := finding with input as {"gear": [item]}

sling(state, shows) := {
	"key": "gear/S1",
	"kind": "wire_rope_sling",
	"uses": 1,
	"tag": {"state": state, "shows": shows},
}

test_breaks_in_one_finding if {
	found(sling("legible", ["maker", "rated_load", "legs"])) == {{
		"key": "gear/S1",
		"names": ["serial"],
	}}
}

test_meets_without_what_is_required if found(sling("legible", ["serial"])) == set()

test_breaks_with_nothing_legible_on_it if {
	found(sling("legible", [])) == {{"key": "gear/S1", "names": ["serial"]}}
}

test_breaks_bridle if {
	found({"key": "gear/B1", "kind": "bridle", "uses": 1, "tag": {"state": "legible", "shows": ["legs"]}}) == {{"key": "gear/B1", "names": ["serial"]}}
}

other(kind, shows) := found({"key": "gear/S1", "kind": kind, "uses": 1, "tag": {"state": "legible", "shows": shows}})

test_breaks_grommet if other("grommet", []) == {{"key": "gear/S1", "names": ["serial"]}}

test_bridles_of_chain_are_another_rule if other("bridle", ["size"]) == set()

test_chain_is_another_rule if other("chain_sling", []) == set()

test_no_tag_is_another_rule if found(sling("missing", [])) == set()

test_illegible_tag_is_another_rule if found(sling("illegible", [])) == set()

test_tag_not_recorded_is_another_rule if found(sling("not_recorded", [])) == set()

test_shackles_have_no_such_tag if {
	found({"key": "gear/K1", "kind": "shackle", "uses": 1, "tag": {"state": "legible", "shows": []}}) == set()
}

test_gear_that_is_not_used if {
	found({"key": "gear/S9", "kind": "wire_rope_sling", "uses": 0, "tag": {"state": "legible", "shows": []}}) == set()
}

test_meets_bridle if {
	found({"key": "gear/B1", "kind": "bridle", "uses": 1, "tag": {"state": "legible", "shows": ["serial"]}}) == set()
}
