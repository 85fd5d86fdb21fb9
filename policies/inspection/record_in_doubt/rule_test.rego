package liftlint.rules.inspection.record_in_doubt_test

import data.liftlint.rules.inspection.record_in_doubt.finding

found(record) := got if got := finding with input as {"doubtful_records": [record]}

record(doubt, uses) := {"key": "doubtful/0/S1", "uses": uses, "doubt": doubt}

test_breaks_unfit_later if found(record("unfit_after_the_day", 1)) == {{"key": "doubtful/0/S1", "grade": "unfit_later"}}

test_breaks_without_outcome if found(record("inspection_without_outcome", 1)) == {{"key": "doubtful/0/S1", "grade": "without_outcome"}}

test_breaks_later if found(record("after_the_day", 1)) == {{"key": "doubtful/0/S1", "grade": "later"}}

test_breaks_look_without_outcome if found(record("look_without_outcome", 1)) == {{"key": "doubtful/0/S1", "grade": "look_without_outcome"}}

test_breaks_due_before_it if found(record("due_before_it", 1)) == {{"key": "doubtful/0/S1", "grade": "due_before_it"}}

test_gear_that_is_not_used if found(record("after_the_day", 0)) == set()

test_meets_none if found(record("none", 1)) == set()
