package liftlint.rules.hitch.basket_slides_along_test

import data.liftlint.rules.hitch.basket_slides_along.finding

grades(hitch) := got if got := {f.grade | some f in finding} with input as {"hitches": [hitch]}

on_pipe(surface, needed) := basket("basket", "round_body", false, false, surface, needed)

basket(kind, on, held, tilts, surface, needed) := {
	"key": "hitch/hook/1",
	"kind": kind,
	"on": on,
	"held_against_sliding": held,
	"load_tilts": tilts,
	"surface": surface,
	"friction_needed_over_given_ratio": needed,
}

test_breaks_dry if grades(on_pipe("dry_steel", 1.01)) == {"slides"}

test_breaks_on_wood if grades(on_pipe("wood", 1.01)) == {"slides"}

test_breaks_on_an_unknown_surface if grades(on_pipe("not_given", 1.01)) == {"slides"}

test_breaks_wet if grades(on_pipe("wet_or_oily", 1.01)) == {"wet"}

test_breaks_round_corners if grades(basket("basket", "body_with_corners", false, false, "wood", 1.01)) == {"slides"}

test_meets_at_what_friction_gives if grades(on_pipe("dry_steel", 1)) == set()

test_meets_in_the_wet_at_what_friction_gives if grades(on_pipe("wet_or_oily", 1)) == set()

test_held if grades(basket("basket", "round_body", true, false, "dry_steel", 9)) == set()

test_tilted_loads_are_another_rule if grades(basket("basket", "round_body", false, true, "dry_steel", 9)) == set()

test_through_a_point if grades(basket("basket", "point", false, false, "none", 9)) == set()

test_chokes_are_another_rule if grades(basket("choke", "round_body", false, false, "dry_steel", 9)) == set()

test_not_known if {
	finding == set() with input as {"hitches": [{
		"key": "hitch/hook/1",
		"kind": "basket",
		"on": "round_body",
		"held_against_sliding": false,
		"load_tilts": false,
		"surface": "not_given",
	}]}
}
