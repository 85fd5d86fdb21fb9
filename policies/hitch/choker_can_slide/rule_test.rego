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

leaning(deg) := {
	"key": "hitch/hook/1",
	"kind": "choke",
	"legs_on_load": 1,
	"held_against_sliding": false,
	"surface": "wood",
	"body_length_m": 3,
	"lean_along_body_deg": deg,
}

test_breaks_pulled_along if grades(leaning(60.1)) == {"along"}

test_meets_at_60 if grades(leaning(60)) == set()

test_breaks_on_steel if grades(alone("dry_steel", 3)) == {"smooth"}

test_breaks_where_wet if grades(alone("wet_or_oily", 3)) == {"slippery"}

test_breaks_over_12_ft if grades(alone("wood", 3.658)) == {"long"}

test_breaks_where_the_surface_is_not_given if grades(alone("not_given", 3)) == {"surface_not_given"}

test_meets_on_wood_of_12_ft if grades(alone("wood", 3.6576)) == set()

test_held if grades(choked("choke", 1, true, "dry_steel", 9)) == set()

test_two_legs if grades(choked("choke", 2, false, "dry_steel", 9)) == set()

test_baskets_are_another_rule if grades(choked("basket", 1, false, "dry_steel", 9)) == set()
