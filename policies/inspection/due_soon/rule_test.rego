package liftlint.rules.inspection.due_soon_test

import data.liftlint.rules.inspection.due_soon.finding

found(item) := got if got := finding with input as {"gear": [item]}

item(days) := {"key": "gear/S1", "uses": 1, "inspected_with_bridle": false, "inspection": {"overdue_days": days}}

test_breaks_30_days_before if found(item(-30)) == {"gear/S1"}

test_breaks_on_the_day if found(item(0)) == {"gear/S1"}

test_meets_31_days_before if found(item(-31)) == set()

test_overdue_is_another_rule if found(item(1)) == set()

test_due_day_unknown if found({"key": "gear/S1", "uses": 1, "inspected_with_bridle": false, "inspection": {"date": "2026-01-05"}}) == set()

test_none_on_record if found({"key": "gear/S1", "uses": 1, "inspected_with_bridle": false}) == set()

test_gear_that_is_not_used if found({"key": "gear/S9", "uses": 0, "inspected_with_bridle": false, "inspection": {"overdue_days": -9}}) == set()

test_part_of_an_inspected_bridle if found({"key": "gear/S1", "uses": 1, "inspected_with_bridle": true, "inspection": {"overdue_days": -9}}) == set()
