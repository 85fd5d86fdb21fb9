package liftlint.rules.sling.rope_not_described_test

import data.liftlint.rules.sling.rope_not_described.finding

found(described) := got if got := finding with input as {"ropes": [{"key": "rope/S1", "described": described}]}

test_breaks_in_one_finding if {
	found(["class", "core", "grade"]) == {{"key": "rope/S1", "names": ["construction", "finish", "lay"]}}
}

test_breaks_without_anything if count(found([])) == 1

test_meets if found(["class", "construction", "core", "grade", "finish", "lay"]) == set()

test_breaks_without_one if {
	found(["class", "construction", "core", "grade", "finish"]) == {{"key": "rope/S1", "names": ["lay"]}}
}
