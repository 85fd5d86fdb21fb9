package liftlint.rules.route.adjuster_out_of_range_test

import data.liftlint.rules.route.adjuster_out_of_range.finding

found(item) := got if got := finding with input as {"gear": [item]}

test_breaks_by_a_millimeter if {
	found({"key": "gear/TB1", "kind": "turnbuckle", "outside_range_m": 0.001}) == {"gear/TB1"}
}

test_breaks_adjuster if {
	found({"key": "gear/AD1", "kind": "adjuster", "outside_range_m": 0.001}) == {"gear/AD1"}
}

test_meets_within if found({"key": "gear/TB1", "kind": "turnbuckle", "outside_range_m": 0}) == set()

test_range_unknown if found({"key": "gear/TB1", "kind": "turnbuckle"}) == set()
