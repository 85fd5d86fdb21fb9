package liftlint.rules.hitch.choker_can_slide_test

import data.liftlint.rules.hitch.choker_can_slide.finding

grades(hitch) := got if got := {f.grade | some f in finding} with input as {"hitches": [hitch]}

alone(surface, length) := choked("choke", 1, false, surface, length)

choked(kind, legs, held, surface, length) := {
	"key": "hitch/hook/1",
	"kind": kind,
	"legs_on_load": legs,
	"held_against_sliding": held,
	"surface": surface,
	"body_length_m": length,
}

test_breaks_on_steel if grades(alone("dry_steel", 3)) == {"smooth"}

test_breaks_where_wet if grades(alone("wet_or_oily", 3)) == {"smooth"}

test_breaks_over_12_ft if grades(alone("wood", 3.658)) == {"long"}

test_breaks_where_the_surface_is_not_given if grades(alone("not_given", 3)) == {"surface_not_given"}

test_meets_on_wood_of_12_ft if grades(alone("wood", 3.6576)) == set()

test_held if grades(choked("choke", 1, true, "dry_steel", 9)) == set()

test_two_legs if grades(choked("choke", 2, false, "dry_steel", 9)) == set()

test_baskets_are_another_rule if grades(choked("basket", 1, false, "dry_steel", 9)) == set()
