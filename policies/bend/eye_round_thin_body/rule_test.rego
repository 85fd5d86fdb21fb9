package liftlint.rules.bend.eye_round_thin_body_test

import data.liftlint.rules.bend.eye_round_thin_body.finding

grades(ratio) := got if {
	got := {f.grade | some f in finding} with input as {"fits": [{"key": "fit/1", "what": "eye_over_bow", "thimble": false, "bend_d": ratio}]}
}

test_breaks_under_the_rope if grades(0.999) == {"thinner_than_rope", "thin"}

test_breaks_at_the_rope if grades(1) == {"thin"}

test_breaks_under_twice if grades(1.999) == {"thin"}

test_meets_at_twice if grades(2) == set()

test_width_unknown if finding == set() with input as {"fits": [{"key": "fit/1", "what": "eye_over_bow", "thimble": false}]}
