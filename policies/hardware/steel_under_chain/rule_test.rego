package liftlint.rules.hardware.steel_under_chain_test

import data.liftlint.rules.hardware.steel_under_chain.finding

held(against, uses) := got if got := finding with input as {"gear": [{"key": "gear/H1", "uses": uses, "steel_against_chain": against}]}

test_breaks if held("weaker", 1) == {"gear/H1"}

test_meets if held("as_good", 1) == set()

test_steel_not_given if held("not_given", 1) == set()

test_not_used if held("weaker", 0) == set()
