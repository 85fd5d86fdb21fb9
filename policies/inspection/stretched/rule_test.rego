package liftlint.rules.inspection.stretched_test

import data.liftlint.rules.inspection.stretched.finding

found(sign) := got if got := finding with input as {"signs": [sign]}

sign(what, kind, grew) := {"key": "sign/S1", "uses": 1, "what": what, "kind": kind, "grew_ratio": grew}

graded(grade) := {{"key": "sign/S1", "grade": grade}}

test_breaks_chain if found(sign("stretch", "chain_sling", 0.05)) == graded("chain")

test_breaks_chain_by_length if found(sign("length_now", "chain_sling", 0.05)) == graded("chain")

test_meets_chain if found(sign("stretch", "chain_sling", 0.049)) == set()

test_breaks_fitting if found(sign("stretch", "shackle", 0.1)) == graded("fitting")

test_meets_fitting if found(sign("stretch", "shackle", 0.099)) == set()

test_breaks_longer if found(sign("length_now", "web_sling", 0.02)) == graded("longer")

test_meets_longer if found(sign("length_now", "web_sling", 0.019)) == set()

test_meets_longer_chain_by_stretch if found(sign("stretch", "chain_sling", 0.03)) == set()

test_meets_longer_by_stretch if found(sign("stretch", "shackle", 0.03)) == set()

test_breaks_longer_chain_at_limit if found(sign("length_now", "chain_sling", 0.02)) == graded("longer_chain")

test_breaks_longer_chain if found(sign("length_now", "chain_sling", 0.049)) == graded("longer_chain")

test_meets_longer_chain if found(sign("length_now", "chain_sling", 0.019)) == set()

test_breaks_much_longer if found(sign("length_now", "web_sling", 0.15)) == graded("longer")

test_breaks_chain_much if found(sign("stretch", "chain_sling", 0.15)) == graded("chain")

test_made_length_unknown if found({"key": "sign/S1", "uses": 1, "what": "length_now", "kind": "web_sling"}) == set()

test_throat_is_another_rule if found(sign("throat_now", "hook", 0.5)) == set()

test_gear_that_is_not_used if found({"key": "sign/S1", "uses": 0, "what": "stretch", "kind": "shackle", "grew_ratio": 1}) == set()
