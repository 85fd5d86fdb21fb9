package liftlint.rules.load.over_rated_load_test

import data.liftlint.rules.load.over_rated_load.finding

grades(part) := got if got := {f.grade | some f in finding} with input as {"parts": [part]}

part(ratio) := at_angle(ratio, 20000)

at_angle(ratio, rated) := {
	"key": "part/K1",
	"kind": "shackle",
	"used_ratio": ratio,
	"marked_load_n": 20000,
	"rated_load_n": rated,
}

test_breaks_over if grades(part(1.001)) == {"over", "near"}

test_breaks_over_at_an_angle if grades(at_angle(1.001, 14000)) == {"over_at_angle", "over", "near_at_angle", "near"}

test_breaks_at_rated_load_at_an_angle_as_near if grades(at_angle(1, 14000)) == {"near_at_angle", "near"}

test_breaks_near_at_an_angle if grades(at_angle(0.901, 19999)) == {"near_at_angle", "near"}

test_meets_at_nine_tenths_at_an_angle if grades(at_angle(0.9, 14000)) == set()

test_breaks_at_rated_load_as_near if grades(part(1)) == {"near"}

test_breaks_near if grades(part(0.901)) == {"near"}

test_meets_at_nine_tenths if grades(part(0.9)) == set()

test_meets_without_force if grades(part(0)) == set()

test_ratio_absent if grades({"key": "part/S1", "kind": "padeye", "load_n": 9000}) == set()
