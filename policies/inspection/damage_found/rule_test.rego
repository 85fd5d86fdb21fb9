package liftlint.rules.inspection.damage_found_test

import data.liftlint.rules.inspection.damage_found.finding

found(sign) := got if got := finding with input as {"signs": [sign]}

sign(what, seen) := {"key": "sign/S1", "uses": 1, "what": what, "seen": seen}

test_breaks_kink if found(sign("kink", true)) == {{"key": "sign/S1", "grade": "removal"}}

test_breaks_tag if found(sign("tag_legible", true)) == {{"key": "sign/S1", "grade": "removal"}}

test_breaks_thimble if found(sign("thimble_loose", true)) == {{"key": "sign/S1", "grade": "to_be_judged"}}

test_breaks_abraded if found(sign("abraded", true)) == {{"key": "sign/S1", "grade": "to_be_judged"}}

test_meets_kink if found(sign("kink", false)) == set()

test_meets_thimble if found(sign("thimble_loose", false)) == set()

test_a_figure if found({"key": "sign/S1", "uses": 1, "what": "wear", "lost_ratio": 0.2}) == set()

test_gear_that_is_not_used if found({"key": "sign/S1", "uses": 0, "what": "kink", "seen": true}) == set()
