package liftlint.rules.register.history_unknown_test

import data.liftlint.rules.register.history_unknown.finding

found(item) := got if got := finding with input as {"on_file": [item]}

item(known) := {"key": "on_file/S1", "uses": 1, "history_known": known}

test_breaks if found(item("no")) == {"on_file/S1"}

test_meets if found(item("yes")) == set()

test_not_said if found(item("not_given")) == set()

test_gear_that_is_not_used if found({"key": "on_file/S1", "uses": 0, "history_known": "no"}) == set()
