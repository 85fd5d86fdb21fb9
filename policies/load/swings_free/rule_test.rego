package liftlint.rules.load.swings_free_test

import data.liftlint.rules.load.swings_free.finding

found(load) := got if got := finding with input as {"loads": [load]}

load(swing, tilt, lean) := {
	"key": "load",
	"hangs_from": "several_hooks",
	"hangs": "steady",
	"tilt_deg": tilt,
	"hooks_lean_from_plumb_deg": lean,
	"swing_m": swing,
}

test_breaks_over_100_mm if found(load(0.101, 1, 0.5)) == {"load"}

test_meets_at_100_mm if found(load(0.1, 1, 0.5)) == set()

test_breaks_at_the_tilt_that_is_still_level if found(load(0.3, 5, 0.5)) == {"load"}

test_tilt_is_another_rule if found(load(0.3, 5.1, 0.5)) == set()

test_breaks_at_the_lean_that_is_still_plumb if found(load(0.3, 1, 1)) == {"load"}

test_leaning_hooks_are_another_rule if found(load(0.3, 1, 1.1)) == set()

test_breaks_when_it_rocks if {
	found({
		"key": "load",
		"hangs_from": "several_hooks",
		"hangs": "rocks",
		"tilt_deg": 1,
		"hooks_lean_from_plumb_deg": 0,
		"swing_m": 0.3,
	}) == {"load"}
}

test_one_hook_is_another_rule if {
	found({
		"key": "load",
		"hangs_from": "one_hook",
		"hangs": "steady",
		"tilt_deg": 1,
		"hooks_lean_from_plumb_deg": 0,
		"swing_m": 0.3,
	}) == set()
}

test_swing_unknown if {
	found({
		"key": "load",
		"hangs_from": "several_hooks",
		"hangs": "steady",
		"tilt_deg": 1,
		"hooks_lean_from_plumb_deg": 0,
	}) == set()
}
