package liftlint.rules.inspection.not_looked_over_test

import data.liftlint.rules.inspection.not_looked_over.finding

names(ids) := got if {
	got := {f.names | some f in finding} with input as {"lifts": [{"key": "lift", "not_looked_over": {"at": "#/gear/0", "ids": ids}}]}
}

test_breaks if names(["S1", "K1"]) == {["S1", "K1"]}

test_breaks_with_one if names(["S1"]) == {["S1"]}

test_meets if names([]) == set()
