package liftlint.rules.fit.hook_in_hole_test

import data.liftlint.rules.fit.hook_in_hole.finding

found(fit) := got if got := finding with input as {"fits": [fit]}

test_breaks if found({"key": "fit/1", "what": "hook_in_hole", "needs_m": 0.031, "room_m": 0.03}) == {"fit/1"}

test_meets if found({"key": "fit/1", "what": "hook_in_hole", "needs_m": 0.03, "room_m": 0.03}) == set()

test_hole_unknown if found({"key": "fit/1", "what": "hook_in_hole", "needs_m": 0.03}) == set()
