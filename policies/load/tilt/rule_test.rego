package liftlint.rules.load.tilt_test

import data.liftlint.rules.load.tilt.finding

grades(load) := got if got := {f.grade | some f in finding} with input as {"loads": [load]}

load(deg, worst) := {"key": "load", "hangs": "steady", "tilt_deg": deg, "tilt_at_worst_deg": worst}

test_breaks_far if grades(load(10.1, 10.1)) == {"far", "some", "far_at_worst", "some_at_worst"}

test_breaks_at_10_as_some if grades(load(10, 10)) == {"some", "some_at_worst"}

test_breaks_some if grades(load(5.1, 5.1)) == {"some", "some_at_worst"}

test_breaks_far_at_worst if grades(load(2, 10.1)) == {"far_at_worst", "some_at_worst"}

test_breaks_some_at_worst if grades(load(5, 5.1)) == {"some_at_worst"}

test_meets_at_5 if grades(load(5, 5)) == set()

test_meets_level if grades(load(0, 0)) == set()

test_tilt_absent if grades({"key": "load", "hangs": "steady"}) == set()

test_overturning_is_another_rule if {
	grades({"key": "load", "hangs": "overturns", "tilt_deg": 90, "tilt_at_worst_deg": 90}) == set()
}
