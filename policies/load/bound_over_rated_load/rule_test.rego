package liftlint.rules.load.bound_over_rated_load_test

import data.liftlint.rules.load.bound_over_rated_load.finding

grades(part) := got if got := {f.grade | some f in finding} with input as {"parts": [part]}

part(bound) := at_angle(bound, 20000)

at_angle(bound, marked) := used("eyebolt", bound, marked)

used(kind, bound, marked) := {
	"key": "part/S1",
	"kind": kind,
	"split": "settled_by_stiffness",
	"used_ratio": 0.8,
	"load_bound_n": bound,
	"marked_load_n": marked,
	"rated_load_n": 20000,
}

shackle(bound, marked) := used("shackle", bound, marked)

test_breaks_pulled_aside if grades(shackle(20001, 28000)) == {"over_pulled_aside", "over_at_angle", "over"}

test_breaks_shackle_in_line if grades(shackle(20001, 20000)) == {"over"}

test_meets_pulled_aside if grades(shackle(20000, 28000)) == set()

test_breaks_over if grades(part(20001)) == {"over"}

test_breaks_over_at_an_angle if grades(at_angle(20001, 28000)) == {"over_at_angle", "over"}

test_breaks_just_under_its_mark if grades(at_angle(20001, 20001)) == {"over_at_angle", "over"}

test_meets_at_rated_load_at_an_angle if grades(at_angle(20000, 28000)) == set()

test_meets_at_rated_load if grades(part(20000)) == set()

test_three_legs if grades({
	"key": "part/S1",
	"split": "settled_by_statics",
	"used_ratio": 0.8,
	"load_bound_n": 30000,
	"rated_load_n": 20000,
}) == set()

test_over_as_it_hangs_is_another_rule if grades({
	"key": "part/S1",
	"split": "settled_by_stiffness",
	"used_ratio": 1.1,
	"load_bound_n": 30000,
	"rated_load_n": 20000,
}) == set()

test_breaks_with_all_of_the_rated_load_used if grades({
	"key": "part/S1",
	"split": "settled_by_stiffness",
	"used_ratio": 1,
	"load_bound_n": 30000,
	"rated_load_n": 20000,
}) == {"over"}

test_bound_absent if grades({
	"key": "part/S1",
	"split": "settled_by_stiffness",
	"used_ratio": 0.8,
	"rated_load_n": 20000,
}) == set()
