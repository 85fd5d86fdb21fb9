package liftlint.rules.inspection.diameter_lost_test

import data.liftlint.rules.inspection.diameter_lost.finding

found(sign) := got if got := finding with input as {"signs": [sign]}

sign(lost) := {"key": "sign/S1", "uses": 1, "what": "diameter_now", "lost_ratio": lost}

test_breaks_removal if found(sign(0.1)) == {{"key": "sign/S1", "grade": "removal"}}

test_breaks_to_be_judged if found(sign(0.099)) == {{"key": "sign/S1", "grade": "to_be_judged"}}

test_breaks_just_to_be_judged if found(sign(0.05)) == {{"key": "sign/S1", "grade": "to_be_judged"}}

test_meets if found(sign(0.049)) == set()

test_meets_thicker if found(sign(-0.02)) == set()

test_made_diameter_unknown if found({"key": "sign/S1", "uses": 1, "what": "diameter_now"}) == set()

test_wear_is_another_rule if found({"key": "sign/S1", "uses": 1, "what": "wear", "lost_ratio": 0.5}) == set()

test_gear_that_is_not_used if found({"key": "sign/S1", "uses": 0, "what": "diameter_now", "lost_ratio": 0.5}) == set()
