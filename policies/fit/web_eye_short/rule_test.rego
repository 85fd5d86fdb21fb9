package liftlint.rules.fit.web_eye_short_test

import data.liftlint.rules.fit.web_eye_short.finding

grades(times) := got if {
	got := {f.grade | some f in finding} with input as {"bearings": [{"key": "bearing/W1", "eye_matters": true, "eye_length_over_body_times": times}]}
}

test_breaks_far if grades(1.99) == {"far_too_short", "short"}

test_breaks_at_two if grades(2) == {"short"}

test_breaks if grades(3.49) == {"short"}

test_meets if grades(3.5) == set()

test_unknown if finding == set() with input as {"bearings": [{"key": "bearing/W1", "eye_matters": true}]}
