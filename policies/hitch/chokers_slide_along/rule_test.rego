package liftlint.rules.hitch.chokers_slide_along_test

import data.liftlint.rules.hitch.chokers_slide_along.finding

grades(hitch) := got if got := {f.grade | some f in finding} with input as {"hitches": [hitch]}

lean(surface, deg) := choked("choke", 2, 1, false, surface, deg)

choked(kind, legs, turns, held, surface, deg) := {
	"key": "hitch/hook/1",
	"kind": kind,
	"legs_on_load": legs,
	"turns": turns,
	"held_against_sliding": held,
	"surface": surface,
	"lean_along_body_deg": deg,
}

test_breaks_along if grades(lean("wood", 60.1)) == {"along", "on_wood"}

test_meets_along_at_60 if grades(lean("wood", 60)) == {"on_wood"}

test_breaks_wet if grades(lean("wet_or_oily", 2.91)) == {"wet"}

test_meets_wet if grades(lean("wet_or_oily", 2.9)) == set()

test_breaks_on_steel if grades(lean("dry_steel", 8.51)) == {"on_steel"}

test_meets_on_steel if grades(lean("dry_steel", 8.5)) == set()

test_breaks_on_a_surface_not_given if grades(lean("not_given", 8.51)) == {"on_steel"}

test_breaks_on_wood if grades(lean("wood", 16.71)) == {"on_wood"}

test_meets_on_wood if grades(lean("wood", 16.7)) == set()

test_meets_plumb_on_any_surface if {
	count({g | some s in ["wood", "dry_steel", "wet_or_oily", "not_given"]; some g in grades(lean(s, 0))}) == 0
}

test_one_choker_is_another_rule if grades(choked("choke", 1, 1, false, "dry_steel", 20)) == set()

test_breaks_with_three_legs if grades(choked("choke", 3, 1, false, "dry_steel", 20)) == {"on_steel"}

test_meets_with_two_turns if {
	count({g | some s in ["wood", "dry_steel"]; some g in grades(choked("choke", 2, 2, false, s, 20))}) == 0
}

test_breaks_wet_with_two_turns if grades(choked("choke", 2, 2, false, "wet_or_oily", 5.71)) == {"wet_turned"}

test_meets_wet_with_two_turns if grades(choked("choke", 2, 2, false, "wet_or_oily", 5.7)) == set()

test_breaks_wet_far_with_one_turn if grades(choked("choke", 2, 1, false, "wet_or_oily", 20)) == {"wet"}

test_breaks_along_with_two_turns if grades(choked("choke", 2, 2, false, "wood", 61)) == {"along"}

test_a_stop_holds if grades(choked("choke", 2, 1, true, "dry_steel", 20)) == set()

test_baskets_are_another_rule if grades(choked("basket", 2, 1, false, "dry_steel", 20)) == set()

test_lean_not_known if {
	grades({"key": "hitch/hook/1", "kind": "choke", "legs_on_load": 2, "turns": 1, "held_against_sliding": false, "surface": "wood"}) == set()
}
