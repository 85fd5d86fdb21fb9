package liftlint.rules.tag.missing_or_incomplete_test

import data.liftlint.rules.tag.missing_or_incomplete.finding

found(item) := got if got := finding with input as {"gear": [item]}

sling(state, shows) := {
	"key": "gear/S1",
	"kind": "wire_rope_sling",
	"uses": 1,
	"tagged_with_bridle": false,
	"tag": {"state": state, "shows": shows},
}

all := ["maker", "diameter", "rated_load", "hitch"]

test_breaks_missing if found(sling("missing", [])) == {{"key": "gear/S1", "grade": "missing"}}

test_breaks_illegible if found(sling("illegible", [])) == {{"key": "gear/S1", "grade": "illegible"}}

test_breaks_not_recorded if found(sling("not_recorded", [])) == {{"key": "gear/S1", "grade": "not_recorded"}}

test_breaks_incomplete_in_one_finding if {
	found(sling("legible", ["diameter", "hitch", "serial"])) == {{
		"key": "gear/S1",
		"grade": "incomplete",
		"names": ["maker", "rated_load"],
	}}
}

bridle(state, shows) := made_of(false, state, shows)

made_of(chain, state, shows) := {
	"key": "gear/B1",
	"kind": "bridle",
	"of_chain": chain,
	"uses": 1,
	"tagged_with_bridle": false,
	"tag": {"state": state, "shows": shows},
}

test_breaks_bridle if {
	found(bridle("legible", ["maker", "diameter", "rated_load", "legs"])) == {{
		"key": "gear/B1",
		"grade": "incomplete",
		"names": ["angle_from_horizontal", "rated_for"],
	}}
}

test_meets_bridle_without_a_hitch if {
	found(bridle("legible", ["maker", "diameter", "rated_load", "angle_from_horizontal", "legs", "rated_for"])) == set()
}

test_breaks_bridle_without_a_tag if {
	found(bridle("missing", [])) == {{"key": "gear/B1", "grade": "missing"}}
}

test_leg_under_the_tag_of_its_bridle if {
	found({"key": "gear/S1", "kind": "wire_rope_sling", "uses": 1, "tagged_with_bridle": true, "tag": {"state": "not_recorded", "shows": []}}) == set()
}

other(kind, shows) := found({
	"key": "gear/S1",
	"kind": kind,
	"of_chain": kind == "chain_sling",
	"uses": 1,
	"tagged_with_bridle": false,
	"tag": {"state": "legible", "shows": shows},
})

incomplete(names) := {{"key": "gear/S1", "grade": "incomplete", "names": names}}

test_breaks_grommet if other("grommet", ["maker", "rated_load", "hitch"]) == incomplete(["diameter"])

test_breaks_chain if other("chain_sling", ["maker", "size", "length", "rated_load", "hitch"]) == incomplete(["grade"])

test_meets_chain if other("chain_sling", ["maker", "size", "grade", "length", "rated_load", "hitch"]) == set()

test_breaks_webbing if other("web_sling", ["maker", "rated_load", "hitch"]) == incomplete(["material"])

test_meets_webbing if other("web_sling", ["maker", "material", "rated_load", "hitch"]) == set()

test_breaks_round_sling if other("round_sling", ["maker", "material", "rated_load", "hitch"]) == incomplete(["serial"])

test_meets_round_sling if other("round_sling", ["maker", "serial", "material", "rated_load", "hitch"]) == set()

test_breaks_mesh if other("mesh_sling", ["maker", "basket_rated_load"]) == incomplete(["choker_rated_load"])

test_meets_mesh if other("mesh_sling", ["maker", "choker_rated_load", "basket_rated_load"]) == set()

test_breaks_webbing_without_a_tag if {
	found({"key": "gear/S1", "kind": "web_sling", "uses": 1, "tagged_with_bridle": false, "tag": {"state": "missing", "shows": []}}) == {{"key": "gear/S1", "grade": "missing"}}
}

without(kind, shows) := found({"key": "gear/S1", "kind": kind, "uses": 1, "tagged_with_bridle": false, "tag": {"state": "missing", "shows": shows}})

missing := {{"key": "gear/S1", "grade": "missing"}}

test_breaks_chain_without_a_tag if without("chain_sling", []) == missing

test_breaks_round_sling_without_a_tag if without("round_sling", []) == missing

test_breaks_mesh_without_a_tag if without("mesh_sling", []) == missing

test_breaks_bridle_of_chain_without_a_tag if found(made_of(true, "missing", [])) == {{"key": "gear/B1", "grade": "missing"}}

test_breaks_bridle_of_rope_once if {
	other("bridle", ["maker", "rated_load", "angle_from_horizontal", "rated_for"]) == incomplete(["diameter", "legs"])
}

of_chain := ["maker", "size", "grade", "length", "rated_load", "angle_from_horizontal", "legs", "rated_for"]

test_meets_bridle_of_chain if found(made_of(true, "legible", of_chain)) == set()

test_breaks_bridle_of_chain_under_a_tag_for_rope if {
	found(made_of(true, "legible", ["maker", "diameter", "rated_load", "angle_from_horizontal", "legs", "rated_for"])) == {{"key": "gear/B1", "grade": "incomplete", "names": ["size", "grade", "length"]}}
}

test_breaks_bridle_of_chain_without_one if {
	found(made_of(true, "legible", ["maker", "size", "length", "rated_load", "angle_from_horizontal", "legs", "rated_for"])) == {{"key": "gear/B1", "grade": "incomplete", "names": ["grade"]}}
}

test_breaks_bridle_of_rope_under_a_tag_for_chain if {
	found(bridle("legible", of_chain)) == {{"key": "gear/B1", "grade": "incomplete", "names": ["diameter"]}}
}

test_meets_complete if found(sling("legible", all)) == set()

test_shackles_have_no_such_tag if {
	found({"key": "gear/K1", "kind": "shackle", "tagged_with_bridle": false, "uses": 1, "tag": {"state": "missing", "shows": []}}) == set()
}

test_gear_that_is_not_used if {
	found({"key": "gear/S9", "kind": "wire_rope_sling", "tagged_with_bridle": false, "uses": 0, "tag": {"state": "missing", "shows": []}}) == set()
}

test_breaks_without_one if {
	found(sling("legible", ["maker", "diameter", "rated_load"])) == {{
		"key": "gear/S1",
		"grade": "incomplete",
		"names": ["hitch"],
	}}
}

test_breaks_bridle_without_one if {
	found(bridle("legible", ["maker", "diameter", "rated_load", "angle_from_horizontal", "legs"])) == {{
		"key": "gear/B1",
		"grade": "incomplete",
		"names": ["rated_for"],
	}}
}
