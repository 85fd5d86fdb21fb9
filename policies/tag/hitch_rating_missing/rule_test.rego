package liftlint.rules.tag.hitch_rating_missing_test

import data.liftlint.rules.tag.hitch_rating_missing.finding

grades(item) := got if got := {f.grade | some f in finding} with input as {"gear": [item]}

sling(hitch, shows) := gear("wire_rope_sling", 1, hitch, "legible", shows)

gear(kind, uses, hitch, state, shows) := {
	"key": "gear/S1",
	"kind": kind,
	"uses": uses,
	"hitches": [hitch],
	"tag": {"state": state, "shows": shows},
}

test_breaks_choked if grades(sling("choke", ["rated_load", "basket_rated_load"])) == {"choke"}

test_breaks_in_a_basket if grades(sling("basket", ["rated_load", "choker_rated_load"])) == {"basket"}

test_breaks_grommet if grades(gear("grommet", 1, "choke", "legible", ["rated_load"])) == {"choke"}

test_breaks_chain if grades(gear("chain_sling", 1, "choke", "legible", ["rated_load"])) == {"choke"}

test_breaks_webbing if grades(gear("web_sling", 1, "basket", "legible", ["rated_load"])) == {"basket"}

test_breaks_round_sling if grades(gear("round_sling", 1, "choke", "legible", ["rated_load"])) == {"choke"}

test_breaks_mesh_that_pulls_straight if grades(gear("mesh_sling", 1, "straight", "legible", ["basket_rated_load"])) == {"straight"}

test_meets_mesh_that_pulls_straight if grades(gear("mesh_sling", 1, "straight", "legible", ["rated_load"])) == set()

test_mesh_in_other_hitches_is_another_rule if grades(gear("mesh_sling", 1, "choke", "legible", ["rated_load"])) == set()

test_mesh_in_a_basket_is_another_rule if grades(gear("mesh_sling", 1, "basket", "legible", ["rated_load"])) == set()

test_mesh_that_does_not_pull_straight if grades(gear("mesh_sling", 1, "choke", "legible", [])) == set()

test_others_that_pull_straight_are_another_rule if grades(gear("web_sling", 1, "straight", "legible", ["basket_rated_load"])) == set()

test_meets_choked if grades(sling("choke", ["rated_load", "choker_rated_load"])) == set()

test_meets_in_a_basket if grades(sling("basket", ["basket_rated_load"])) == set()

test_meets_straight if grades(sling("straight", ["rated_load"])) == set()

test_tag_that_can_not_be_read_is_another_rule if grades(gear("wire_rope_sling", 1, "choke", "illegible", [])) == set()

test_gear_that_is_not_used if grades(gear("wire_rope_sling", 0, "choke", "legible", [])) == set()

test_bridles_hang_straight if grades(gear("bridle", 1, "choke", "legible", [])) == set()
