package liftlint.rules.grommet.breaking_load_too_high_test

import data.liftlint.rules.grommet.breaking_load_too_high.finding

grades(ratio) := got if {
	got := {f.grade | some f in finding} with input as {"gear": [{"key": "gear/G1", "uses": 1, "breaking_load_given": true, "breaking_over_strongest_ratio": ratio}]}
}

test_breaks_far_over if grades(1.251) == {"far_over", "over"}

test_breaks_at_the_limit if grades(1.25) == {"over"}

test_breaks_over if grades(1.051) == {"over"}

test_meets if grades(1.05) == set()

test_unknown if finding == set() with input as {"gear": [{"key": "gear/G1", "uses": 1, "breaking_load_given": true}]}
