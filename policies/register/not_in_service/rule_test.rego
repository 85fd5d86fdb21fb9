package liftlint.rules.register.not_in_service_test

import data.liftlint.rules.register.not_in_service.finding

found(item) := got if got := finding with input as {"on_file": [item]}

item(status) := {"key": "on_file/S1", "uses": 1, "status": status}

graded(grade) := {{"key": "on_file/S1", "grade": grade}}

test_breaks_scrapped if found(item("scrapped")) == graded("scrapped")

test_breaks_out_of_service if found(item("out_of_service")) == graded("out_of_service")

test_breaks_quarantined if found(item("quarantined")) == graded("quarantined")

test_breaks_not_given if found(item("not_given")) == graded("not_given")

test_meets if found(item("in_service")) == set()

test_gear_that_is_not_used if found({"key": "on_file/S1", "uses": 0, "status": "scrapped"}) == set()
