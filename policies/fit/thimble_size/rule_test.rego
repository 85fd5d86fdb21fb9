package liftlint.rules.fit.thimble_size_test

import data.liftlint.rules.fit.thimble_size.finding

grades(ratio) := got if {
	got := {f.grade | some f in finding} with input as {"fits": [{"key": "fit/1", "thimble_size_given": true, "thimble_over_rope_ratio": ratio}]}
}

test_breaks_larger if grades(1.031) == {"too_large"}

test_breaks_smaller if grades(0.969) == {"too_small"}

test_meets_within if {
	grades(1.03) == set()
	grades(1) == set()
	grades(0.97) == set()
}

test_rope_unknown if finding == set() with input as {"fits": [{"key": "fit/1", "thimble_size_given": true}]}
