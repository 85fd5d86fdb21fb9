package liftlint.rules.sling.faults_seen_test

import data.liftlint.rules.sling.faults_seen.finding

found(faults) := got if got := finding with input as {"gear": [{"key": "gear/S1", "uses": 1, "looked_over": true, "faults_seen": faults}]}

test_breaks_in_one_finding if found(["kink", "heat"]) == {{"key": "gear/S1", "names": ["kink", "heat"]}}

test_meets if found([]) == set()

test_breaks_with_one if found(["crushed"]) == {{"key": "gear/S1", "names": ["crushed"]}}

test_not_looked_over if {
	finding == set() with input as {"gear": [{"key": "gear/S1", "uses": 1, "looked_over": false, "faults_seen": []}]}
}

test_gear_that_is_not_used if {
	finding == set() with input as {"gear": [{"key": "gear/S9", "uses": 0, "looked_over": true, "faults_seen": ["kink"]}]}
}
