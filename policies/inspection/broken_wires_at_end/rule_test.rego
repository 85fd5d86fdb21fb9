package liftlint.rules.inspection.broken_wires_at_end_test

import data.liftlint.rules.inspection.broken_wires_at_end.finding

found(sign) := got if got := finding with input as {"signs": [sign]}

sign(n) := {"key": "sign/S1", "uses": 1, "what": "broken_wires_at_fitting", "count": n}

test_breaks_two if found(sign(2)) == {"sign/S1"}

test_breaks_more_than_one if found(sign(1.01)) == {"sign/S1"}

test_meets_one if found(sign(1)) == set()

test_elsewhere if found({"key": "sign/S1", "uses": 1, "what": "broken_wires_in_one_lay", "count": 9}) == set()

test_gear_that_is_not_used if found({"key": "sign/S1", "uses": 0, "what": "broken_wires_at_fitting", "count": 9}) == set()
