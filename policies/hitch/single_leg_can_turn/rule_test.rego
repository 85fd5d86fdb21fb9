package liftlint.rules.hitch.single_leg_can_turn_test

import data.liftlint.rules.hitch.single_leg_can_turn.finding

grades(alone, held, tucked) := got if {
	got := {f.grade | some f in finding} with input as {"legs": [{
		"key": "leg/hook/1",
		"alone": alone,
		"turning_held": held,
		"hand_tucked": tucked,
	}]}
}

test_breaks_free if grades(true, false, false) == {"free"}

test_breaks_hand_tucked if grades(true, false, true) == {"hand_tucked", "free"}

test_meets_held if grades(true, true, false) == set()

test_meets_hand_tucked_and_held if grades(true, true, true) == set()

test_one_of_several if grades(false, false, true) == set()
