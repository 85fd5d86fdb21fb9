package liftlint.rules.register.overload_not_cleared_test

import data.liftlint.rules.register.overload_not_cleared.finding

found(item) := got if got := finding with input as {"on_file": [item]}

item(overload) := {"key": "on_file/S1", "uses": 1, "overload": overload}

test_breaks if found(item("not_cleared")) == {"on_file/S1"}

test_meets_cleared if found(item("cleared")) == set()

test_meets_none if found(item("none")) == set()

test_gear_that_is_not_used if found({"key": "on_file/S1", "uses": 0, "overload": "not_cleared"}) == set()
