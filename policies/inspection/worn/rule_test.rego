package liftlint.rules.inspection.worn_test

import data.liftlint.rules.inspection.worn.finding

found(sign) := got if got := finding with input as {"signs": [sign]}

sign(what, lost) := {"key": "sign/S1", "uses": 1, "what": what, "lost_ratio": lost}

test_breaks_outer_wires if found(sign("outer_wire_wear", 0.333)) == {{"key": "sign/S1", "grade": "outer_wires"}}

test_meets_outer_wires if found(sign("outer_wire_wear", 0.332)) == set()

test_breaks_section if found(sign("wear", 0.1)) == {{"key": "sign/S1", "grade": "section"}}

test_meets_section if found(sign("wear", 0.099)) == set()

test_breaks_worn_through if found(sign("wear", 0.5)) == {{"key": "sign/S1", "grade": "section"}}

test_diameter_is_another_rule if found(sign("diameter_now", 0.5)) == set()

test_gear_that_is_not_used if found({"key": "sign/S1", "uses": 0, "what": "wear", "lost_ratio": 0.5}) == set()
