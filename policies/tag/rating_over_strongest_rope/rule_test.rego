package liftlint.rules.tag.rating_over_strongest_rope_test

import data.liftlint.rules.tag.rating_over_strongest_rope.finding

grades(ratio) := got if {
	got := {f.grade | some f in finding} with input as {"gear": [{"key": "gear/S1", "uses": 1, "rated_against": "strongest_rope", "rated_over_strongest_ratio": ratio}]}
}

test_breaks_over_ten_percent if grades(1.101) == {"far_over", "over"}

test_breaks_at_ten_percent if grades(1.1) == {"over"}

test_meets_at_three_percent if grades(1.03) == set()

test_meets_far_under if grades(0.1) == set()

test_unknown if finding == set() with input as {"gear": [{"key": "gear/S1", "uses": 1, "rated_against": "strongest_rope"}]}

test_breaks_over_three_percent if grades(1.031) == {"over"}
