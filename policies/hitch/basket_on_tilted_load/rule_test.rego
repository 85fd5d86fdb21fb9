package liftlint.rules.hitch.basket_on_tilted_load_test

import data.liftlint.rules.hitch.basket_on_tilted_load.finding

found(kind, on, tilts, held) := got if {
	got := finding with input as {"hitches": [{
		"key": "hitch/hook/1",
		"kind": kind,
		"on": on,
		"load_tilts": tilts,
		"held_against_sliding": held,
	}]}
}

test_breaks_round_a_pipe if found("basket", "round_body", true, false) == {"hitch/hook/1"}

test_breaks_round_a_bundle if found("basket", "body_with_corners", true, false) == {"hitch/hook/1"}

test_meets_against_a_stop if found("basket", "round_body", true, true) == set()

test_level if found("basket", "round_body", false, false) == set()

test_through_a_point if found("basket", "point", true, false) == set()

test_choke if found("choke", "round_body", true, false) == set()
