package liftlint.rules.route.stated_angle_off_test

import data.liftlint.rules.route.stated_angle_off.finding

grades(leg) := got if got := {f.grade | some f in finding} with input as {"legs": [leg]}

at(angle, off) := {
	"key": "leg/hook/1",
	"angle_stated": true,
	"stated_angle_from_horizontal_deg": 60,
	"angle_from_horizontal_deg": angle,
	"stated_angle_off_deg": off,
}

test_breaks_flatter if grades(at(56.99, 3.01)) == {"flatter", "steeper"}

test_breaks_as_steep_as_stated_never_as_flatter if grades(at(60, 3.01)) == {"steeper"}

test_breaks_steeper if grades(at(63.01, 3.01)) == {"steeper"}

test_meets_a_little_flatter if grades(at(57, 3)) == set()

test_meets_a_little_steeper if grades(at(63, 3)) == set()

test_not_stated if grades({"key": "leg/hook/1", "angle_stated": false, "angle_from_horizontal_deg": 40}) == set()
