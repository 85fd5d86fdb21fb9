package liftlint.rules.inspection.found_unfit_test

import data.liftlint.rules.inspection.found_unfit.finding

found(item) := got if got := finding with input as {"on_file": [item]}

item(what) := used(what, 1)

used(what, uses) := {"key": "on_file/S1", "uses": uses, "failed": {"date": "2026-06-01", "what": what}}

test_breaks_periodic if found(item("periodic")) == {"on_file/S1"}

test_breaks_before_use if found(item("before_use")) == {"on_file/S1"}

test_meets_none if found(item("none")) == set()

test_gear_that_is_not_used if found(used("periodic", 0)) == set()
