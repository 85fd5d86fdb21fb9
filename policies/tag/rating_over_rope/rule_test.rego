package liftlint.rules.tag.rating_over_rope_test

import data.liftlint.rules.tag.rating_over_rope.finding

grades(ratio) := of_kind("wire_rope_sling", ratio)

of_kind(kind, ratio) := got if {
	got := {f.grade | some f in finding} with input as {"gear": [{"key": "gear/S1", "kind": kind, "uses": 1, "rated_against": "rope_like_it", "rated_over_believable_ratio": ratio}]}
}

test_breaks_over_ten_percent if grades(1.101) == {"far_over", "over"}

test_breaks_grommet_over_ten_percent if of_kind("grommet", 1.101) == {"far_over", "grommet_far_over", "over"}

test_breaks_grommet_at_ten_percent if of_kind("grommet", 1.1) == {"over"}

test_breaks_at_ten_percent if grades(1.1) == {"over"}

test_breaks_over_three_percent if grades(1.031) == {"over"}

test_meets_at_three_percent if grades(1.03) == set()

test_meets_at_half if grades(0.5) == set()

test_breaks_under_half if grades(0.499) == {"far_under"}

test_unknown if finding == set() with input as {"gear": [{"key": "gear/S1", "kind": "wire_rope_sling", "uses": 1, "rated_against": "rope_like_it"}]}
