package liftlint.rules.load.bound_over_rated_load_test

import data.liftlint.rules.load.bound_over_rated_load.finding

found(part) := got if got := finding with input as {"parts": [part]}

part(bound) := {
	"key": "part/S1",
	"split": "settled_by_stiffness",
	"used_ratio": 0.8,
	"load_bound_n": bound,
	"rated_load_n": 20000,
}

test_breaks_over if found(part(20001)) == {"part/S1"}

test_meets_at_rated_load if found(part(20000)) == set()

test_three_legs if found({
	"key": "part/S1",
	"split": "settled_by_statics",
	"used_ratio": 0.8,
	"load_bound_n": 30000,
	"rated_load_n": 20000,
}) == set()

test_over_as_it_hangs_is_another_rule if found({
	"key": "part/S1",
	"split": "settled_by_stiffness",
	"used_ratio": 1.1,
	"load_bound_n": 30000,
	"rated_load_n": 20000,
}) == set()

test_breaks_with_all_of_the_rated_load_used if found({
	"key": "part/S1",
	"split": "settled_by_stiffness",
	"used_ratio": 1,
	"load_bound_n": 30000,
	"rated_load_n": 20000,
}) == {"part/S1"}

test_bound_absent if found({
	"key": "part/S1",
	"split": "settled_by_stiffness",
	"used_ratio": 0.8,
	"rated_load_n": 20000,
}) == set()
