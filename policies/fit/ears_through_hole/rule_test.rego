package liftlint.rules.fit.ears_through_hole_test

import data.liftlint.rules.fit.ears_through_hole.finding

grades(ratio) := got if {
	got := {f.grade | some f in finding} with input as {"fits": [{"key": "fit/1", "what": "bow_in_hole", "pin_over_hole_ratio": ratio}]}
}

test_breaks_where_the_pin_is_as_wide_as_the_hole if grades(1) == {"closed", "tight"}

test_breaks_as_tight_below if grades(0.999) == {"tight"}

test_breaks_over_half if grades(0.501) == {"tight"}

test_meets_at_half if grades(0.5) == set()

test_a_pin_in_the_hole_is_another_rule if {
	finding == set() with input as {"fits": [{"key": "fit/1", "what": "pin_in_hole", "pin_over_hole_ratio": 1.2}]}
}

test_unknown if {
	finding == set() with input as {"fits": [{"key": "fit/1", "what": "bow_in_hole"}]}
}
