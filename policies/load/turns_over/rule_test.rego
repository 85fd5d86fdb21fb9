package liftlint.rules.load.turns_over_test

import data.liftlint.rules.load.turns_over.finding

grades(load) := got if got := {f.grade | some f in finding} with input as {"loads": [load]}

test_breaks_on_two_legs if {
	grades({"key": "load", "hangs": "points_below_center_of_gravity"}) == {"points_below_center_of_gravity"}
}

test_breaks_on_more_legs if grades({"key": "load", "hangs": "overturns"}) == {"overturns"}

test_breaks_when_it_rocks if grades({"key": "load", "hangs": "rocks", "hangs_at_worst": "rocks"}) == {"rocks"}

test_breaks_at_worst_overturns if grades({"key": "load", "hangs": "steady", "hangs_at_worst": "overturns"}) == {"at_worst"}

test_breaks_at_worst_points_below if {
	grades({"key": "load", "hangs": "steady", "hangs_at_worst": "points_below_center_of_gravity"}) == {"at_worst"}
}

test_breaks_at_worst_no_rest if grades({"key": "load", "hangs": "steady", "hangs_at_worst": "does_not_balance"}) == {"at_worst"}

test_meets_steady if grades({"key": "load", "hangs": "steady", "hangs_at_worst": "steady"}) == set()

test_not_computed if grades({"key": "load"}) == set()
