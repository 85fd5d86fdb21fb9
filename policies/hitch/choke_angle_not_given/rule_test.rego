package liftlint.rules.hitch.choke_angle_not_given_test

import data.liftlint.rules.hitch.choke_angle_not_given.finding

found(given, legs, lean) := got if {
	got := finding with input as {"hitches": [{
		"key": "hitch/hook/1",
		"kind": "choke",
		"choke_angle_given": given,
		"legs_on_load": legs,
		"lean_along_body_deg": lean,
	}]}
}

test_breaks_where_two_lean if found(false, 2, 5.1) == {"hitch/hook/1"}

test_meets_within_5_degrees if found(false, 2, 5) == set()

test_angle_given if found(true, 2, 30) == set()

test_one_alone if found(false, 1, 30) == set()
