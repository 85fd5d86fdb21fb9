package liftlint.rules.inspection.stretched_test

import data.liftlint.rules.inspection.stretched.finding

found(sign) := got if got := finding with input as {"signs": [sign]}

sign(what, kind, grew) := {"key": "sign/S1", "uses": 1, "what": what, "kind": kind, "grew_ratio": grew}

graded(grade) := {{"key": "sign/S1", "grade": grade}}

graded_too(grade) := {{"key": "sign/S1", "grade": grade}, {"key": "sign/S1", "grade": "to_be_judged"}}

test_breaks_chain if found(sign("stretch", "chain_sling", 0.01)) == graded_too("chain")

test_breaks_fitting if found(sign("stretch", "shackle", 0.01)) == graded_too("fitting")

test_breaks_chain_once if found(sign("stretch", "chain_sling", 0.06)) == graded_too("chain")

test_breaks_chain_that_is_little_longer if found(sign("stretch", "chain_sling", 0.03)) == graded_too("chain")

test_breaks_fitting_once if found(sign("stretch", "shackle", 0.03)) == graded_too("fitting")

test_breaks_to_be_judged if found(sign("stretch", "chain_sling", 0.005)) == graded("to_be_judged")

test_breaks_fitting_to_be_judged if found(sign("stretch", "shackle", 0.009)) == graded("to_be_judged")

test_meets_chain if found(sign("stretch", "chain_sling", 0.004)) == set()

test_breaks_chain_by_length if found(sign("length_now", "chain_sling", 0.05)) == graded("chain_length")

test_breaks_longer_chain if found(sign("length_now", "chain_sling", 0.049)) == graded("longer_chain")

test_breaks_longer_chain_at_limit if found(sign("length_now", "chain_sling", 0.02)) == graded("longer_chain")

test_meets_longer_chain if found(sign("length_now", "chain_sling", 0.019)) == set()

test_breaks_longer if found(sign("length_now", "web_sling", 0.02)) == graded("longer")

test_breaks_much_longer if found(sign("length_now", "web_sling", 0.15)) == graded("longer")

test_meets_longer if found(sign("length_now", "web_sling", 0.019)) == set()

test_made_length_unknown if found({"key": "sign/S1", "uses": 1, "what": "length_now", "kind": "web_sling"}) == set()

test_throat_is_another_rule if found(sign("throat_now", "hook", 0.5)) == set()

test_gear_that_is_not_used if found({"key": "sign/S1", "uses": 0, "what": "stretch", "kind": "shackle", "grew_ratio": 1}) == set()
