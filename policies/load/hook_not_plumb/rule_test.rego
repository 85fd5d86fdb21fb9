package liftlint.rules.load.hook_not_plumb_test

import data.liftlint.rules.load.hook_not_plumb.finding

found(load) := got if got := finding with input as {"loads": [load]}

load(offset, tilt) := {
	"key": "load",
	"hangs_from": "one_hook",
	"hangs": "steady",
	"tilt_deg": tilt,
	"plumb_offset_m": offset,
}

test_breaks_over_100_mm if found(load(0.101, 2)) == {"load"}

test_meets_at_100_mm if found(load(0.1, 2)) == set()

test_meets_plumb if found(load(0, 0)) == set()

test_breaks_at_the_tilt_that_is_still_level if found(load(0.3, 5)) == {"load"}

test_tilt_is_another_rule if found(load(0.3, 5.1)) == set()

test_breaks_when_it_rocks if {
	found({"key": "load", "hangs_from": "one_hook", "hangs": "rocks", "tilt_deg": 1, "plumb_offset_m": 0.3}) == {"load"}
}

test_overturning_is_another_rule if {
	found({"key": "load", "hangs_from": "one_hook", "hangs": "overturns", "tilt_deg": 1, "plumb_offset_m": 0.3}) == set()
}

test_offset_unknown if found({"key": "load", "hangs_from": "one_hook", "hangs": "steady", "tilt_deg": 1}) == set()

test_several_hooks_are_another_rule if {
	found({"key": "load", "hangs_from": "several_hooks", "hangs": "steady", "tilt_deg": 1, "plumb_offset_m": 0.3}) == set()
}
