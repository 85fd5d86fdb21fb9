package liftlint.rules.load.rigging_mass_missing_test

import data.liftlint.rules.load.rigging_mass_missing.finding

hooks(n) := {"hooks": [{"key": "hook/hook", "legs_direct": 2, "items_without_mass": n}]}

test_breaks if finding == {"hook/hook"} with input as hooks(1)

test_meets if finding == set() with input as hooks(0)
