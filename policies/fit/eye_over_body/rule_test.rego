package liftlint.rules.fit.eye_over_body_test

import data.liftlint.rules.fit.eye_over_body.finding

grades(fit) := got if got := {f.grade | some f in finding} with input as {"fits": [fit]}

fit(ratio, deg) := {
	"key": "fit/S1/upper",
	"what": "eye_over_hook",
	"thimble": false,
	"width_over_length_ratio": ratio,
	"eye_included_angle_deg": deg,
}

test_breaks_too_wide if grades(fit(0.501, 39.1)) == {"too_wide", "spread"}

test_breaks_at_half_as_spread if grades(fit(0.5, 38.9)) == {"spread"}

test_breaks_spread if grades(fit(0.42, 30.1)) == {"spread"}

test_meets_at_30 if grades(fit(0.41, 30)) == set()

test_thimble if {
	grades({"key": "fit/S1/upper", "what": "eye_over_pin", "thimble": true, "width_over_length_ratio": 0.9, "eye_included_angle_deg": 60}) == set()
}

test_width_unknown if grades({"key": "fit/S1/upper", "what": "eye_over_hook", "thimble": false}) == set()

test_breaks_on_the_ratio_alone if {
	grades({"key": "fit/S1/upper", "what": "eye_over_pin", "thimble": false, "width_over_length_ratio": 0.9}) == {"too_wide"}
}
