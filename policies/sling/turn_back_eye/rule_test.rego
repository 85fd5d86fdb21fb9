package liftlint.rules.sling.turn_back_eye_test

import data.liftlint.rules.sling.turn_back_eye.finding

grades(kinds) := got if {
	got := {f.grade | some f in finding} with input as {"gear": [{"key": "gear/S1", "kind": "wire_rope_sling", "uses": 1, "eye_kinds": kinds}]}
}

test_breaks if grades(["flemish_sleeve", "turn_back_sleeve"]) == {"turn_back"}

test_breaks_where_not_given if grades(["flemish_sleeve", "not_given"]) == {"not_given"}

test_meets if grades(["flemish_sleeve"]) == set()

test_has_no_eyes if grades([]) == set()
