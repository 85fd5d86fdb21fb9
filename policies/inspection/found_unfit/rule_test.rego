package liftlint.rules.inspection.found_unfit_test

import data.liftlint.rules.inspection.found_unfit.finding

found(item) := got if got := finding with input as {"on_file": [item]}

item(outcome) := {"key": "on_file/S1", "uses": 1, "inspected": true, "newest": {"date": "2026-06-01", "outcome": outcome}}

test_breaks_failed if found(item("failed")) == {"on_file/S1"}

test_meets_passed if found(item("passed")) == set()

test_meets_with_remarks if found(item("passed_with_remarks")) == set()

test_without_an_outcome if found(item("not_given")) == set()

test_never_inspected if found({"key": "on_file/S1", "uses": 1, "inspected": false, "newest": {"outcome": "not_given"}}) == set()

test_gear_that_is_not_used if found({"key": "on_file/S1", "uses": 0, "inspected": true, "newest": {"outcome": "failed"}}) == set()
