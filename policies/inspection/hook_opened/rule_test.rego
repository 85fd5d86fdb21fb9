package liftlint.rules.inspection.hook_opened_test

import data.liftlint.rules.inspection.hook_opened.finding

found(sign) := got if got := finding with input as {"signs": [sign]}

throat(ratio, m) := {"key": "sign/H1", "uses": 1, "what": "throat_now", "grew_ratio": ratio, "grew_m": m}

graded(grade) := {{"key": "sign/H1", "grade": grade}}

test_breaks_opened if found(throat(0.05, 0.001)) == graded("opened")

test_breaks_opened_both_ways if found(throat(0.05, 0.01)) == graded("opened")

test_meets_opened if found(throat(0.049, 0.001)) == set()

test_breaks_opened_far if found(throat(0.04, 0.0064)) == graded("opened_far")

test_meets_opened_far if found(throat(0.04, 0.00635)) == set()

test_made_throat_unknown if found({"key": "sign/H1", "uses": 1, "what": "throat_now"}) == set()

test_length_is_another_rule if found({"key": "sign/H1", "uses": 1, "what": "length_now", "grew_ratio": 1, "grew_m": 1}) == set()

test_gear_that_is_not_used if found({"key": "sign/H1", "uses": 0, "what": "throat_now", "grew_ratio": 1, "grew_m": 1}) == set()
