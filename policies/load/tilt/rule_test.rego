package liftlint.rules.load.tilt_test

import data.liftlint.rules.load.tilt.finding

grades(load) := got if got := {f.grade | some f in finding} with input as {"loads": [load]}

load(deg) := {"key": "load", "hangs": "steady", "tilt_deg": deg}

test_breaks_far if grades(load(10.1)) == {"far", "some"}

test_breaks_at_10_as_some if grades(load(10)) == {"some"}

test_breaks_some if grades(load(5.1)) == {"some"}

test_meets_at_5 if grades(load(5)) == set()

test_meets_level if grades(load(0)) == set()

test_tilt_absent if grades({"key": "load", "hangs": "steady"}) == set()

test_overturning_is_another_rule if grades({"key": "load", "hangs": "overturns", "tilt_deg": 90}) == set()
