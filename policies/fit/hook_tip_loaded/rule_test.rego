package liftlint.rules.fit.hook_tip_loaded_test

import data.liftlint.rules.fit.hook_tip_loaded.finding

found(use) := got if got := finding with input as {"hook_uses": [use]}

test_breaks if found({"key": "hook_use/hook", "widest_m": 0.029, "throat_m": 0.028}) == {"hook_use/hook"}

test_meets if found({"key": "hook_use/hook", "widest_m": 0.028, "throat_m": 0.028}) == set()

test_throat_unknown if found({"key": "hook_use/hook", "widest_m": 0.028}) == set()
