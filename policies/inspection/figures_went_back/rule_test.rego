package liftlint.rules.inspection.figures_went_back_test

import data.liftlint.rules.inspection.figures_went_back.finding

found(sign) := got if got := finding with input as {"signs": [sign]}

sign(went_back, uses) := {"key": "sign/S1/wear", "uses": uses, "went_back": went_back}

test_breaks_not_counted if found(sign("not_counted", 1)) == {{"key": "sign/S1/wear", "grade": "not_counted"}}

test_breaks_counted if found(sign("counted", 1)) == {{"key": "sign/S1/wear", "grade": "counted"}}

test_meets_no if found(sign("no", 1)) == set()

test_gear_that_is_not_used if found(sign("counted", 0)) == set()
