package liftlint.rules.sling.eye_not_allowed_test

import data.liftlint.rules.sling.eye_not_allowed.finding

grades(kinds) := got if {
	got := {f.grade | some f in finding} with input as {"ropes": [{"key": "rope/S1", "eye_kinds": kinds}]}
}

test_breaks_knotted if grades(["flemish_sleeve", "knotted"]) == {"knotted"}

test_breaks_clipped if grades(["clipped"]) == {"clipped"}

test_meets if grades(["flemish_sleeve", "turn_back_sleeve"]) == set()

test_meets_not_given if grades(["not_given"]) == set()
