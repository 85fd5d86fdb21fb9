package liftlint.rules.tag.serial_missing_test

import data.liftlint.rules.tag.serial_missing.finding

found(kind, uses, state, shows) := got if {
	got := finding with input as {"gear": [{"key": "gear/S1", "kind": kind, "uses": uses, "tag": {"state": state, "shows": shows}}]}
}

test_breaks_chain if found("chain_sling", 1, "legible", ["maker"]) == {"gear/S1"}

test_breaks_webbing if found("web_sling", 1, "legible", ["maker"]) == {"gear/S1"}

test_breaks_mesh if found("mesh_sling", 1, "legible", ["maker"]) == {"gear/S1"}

test_meets if found("chain_sling", 1, "legible", ["serial"]) == set()

test_round_slings_have_to_show_one if found("round_sling", 1, "legible", []) == set()

test_no_tag_is_another_rule if found("chain_sling", 1, "missing", []) == set()

test_gear_that_is_not_used if found("chain_sling", 0, "legible", []) == set()
