package liftlint.rules.fit.thimble_over_body_test

import data.liftlint.rules.fit.thimble_over_body.finding

fits(body, eye) := {"fits": [{"key": "fit/1", "what": "eye_over_bow", "thimble": true, "body_width_m": body, "eye_width_m": eye}]}

test_breaks if finding == {"fit/1"} with input as fits(0.081, 0.08)

test_meets if finding == set() with input as fits(0.08, 0.08)

test_soft_eye_is_another_rule if finding == set() with input as {"fits": [{"key": "fit/1", "what": "eye_over_bow", "thimble": false, "body_width_m": 1, "eye_width_m": 0.1}]}
