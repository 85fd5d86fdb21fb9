package liftlint.rules.fit.leg_off_hook_axis_test

import data.liftlint.rules.fit.leg_off_hook_axis.finding

found(use) := got if got := finding with input as {"hook_uses": [use]}

test_breaks if found({"key": "hook_use/hook", "of": "crane", "legs_direct": 2, "off_axis_deg": 45.1}) == {"hook_use/hook"}

test_meets if found({"key": "hook_use/hook", "of": "crane", "legs_direct": 2, "off_axis_deg": 45}) == set()

test_angle_unknown if found({"key": "hook_use/hook", "of": "crane", "legs_direct": 2}) == set()
