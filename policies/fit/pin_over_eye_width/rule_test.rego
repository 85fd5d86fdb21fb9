package liftlint.rules.fit.pin_over_eye_width_test

import data.liftlint.rules.fit.pin_over_eye_width.finding

eye(body, eye) := {
	"key": "fit/1",
	"what": "eye_over_pin",
	"thimble": false,
	"eye_width_given": true,
	"width_over_length_ratio": 0.3,
	"body_width_m": body,
	"eye_width_m": eye,
}

found(fit) := got if got := finding with input as {"fits": [fit]}

test_breaks if found(eye(0.061, 0.06)) == {"fit/1"}

test_meets_at_its_width if found(eye(0.06, 0.06)) == set()

test_meets_below if found(eye(0.059, 0.06)) == set()

test_body_unknown if {
	found({"key": "fit/1", "what": "eye_over_pin", "thimble": false, "eye_width_given": true, "eye_width_m": 0.06}) == set()
}
