package liftlint.rules.fit.hook_points_inward_test

import data.liftlint.rules.fit.hook_points_inward.finding

found(use) := got if got := finding with input as {"hook_uses": [use]}

test_breaks if found({"key": "hook_use/hook/1/K1", "of": "sling", "points": "inward"}) == {"hook_use/hook/1/K1"}

test_meets if found({"key": "hook_use/hook/1/K1", "of": "sling", "points": "outward"}) == set()

test_not_said if found({"key": "hook_use/hook/1/K1", "of": "sling"}) == set()
