package liftlint.rules.inspection.record_incomplete_test

import data.liftlint.rules.inspection.record_incomplete.finding

found(item) := got if got := finding with input as {"on_file": [item]}

item(lacks) := {"key": "on_file/S1", "uses": 1, "inspected": true, "newest": {"date": "2026-06-01", "lacks": lacks}}

graded(grade, lacks) := {{"key": "on_file/S1", "grade": grade, "names": lacks}}

test_breaks_without_outcome if found(item(["outcome"])) == graded("shows_nothing", ["outcome"])

test_breaks_without_inspector if found(item(["inspector", "measures"])) == graded("shows_nothing", ["inspector", "measures"])

test_breaks_without_both if found(item(["inspector", "outcome"])) == graded("shows_nothing", ["inspector", "outcome"])

test_breaks_without_next_due if found(item(["next_due"])) == graded("not_all_said", ["next_due"])

test_breaks_without_measures if found(item(["measures"])) == graded("not_all_said", ["measures"])

test_meets if found(item([])) == set()

test_never_inspected if found({"key": "on_file/S1", "uses": 1, "inspected": false, "newest": {"lacks": ["outcome"]}}) == set()

test_gear_that_is_not_used if found({"key": "on_file/S1", "uses": 0, "inspected": true, "newest": {"lacks": ["outcome"]}}) == set()
