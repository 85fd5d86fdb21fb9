package liftlint.rules.load.mass_estimated_test

import data.liftlint.rules.load.mass_estimated.finding

found(load) := got if got := finding with input as {"loads": [load]}

load(known_by, ratio) := {
	"key": "load",
	"mass_known_by": known_by,
	"most_used_ratio": ratio,
	"most_used_part": "S1 in hook/1",
}

test_breaks_over_three_quarters if found(load("estimated", 0.751)) == {"load"}

test_meets_at_three_quarters if found(load("estimated", 0.75)) == set()

test_weighed if found(load("weighed", 0.99)) == set()

test_calculated if found(load("calculated", 0.99)) == set()

test_share_unknown if found({"key": "load", "mass_known_by": "estimated"}) == set()

test_how_it_is_known_absent if found({"key": "load", "most_used_ratio": 0.99}) == set()
