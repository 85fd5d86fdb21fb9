package liftlint.rules.fit.hook_latch_test

import data.liftlint.rules.fit.hook_latch.finding

grades(use) := got if got := {f.grade | some f in finding} with input as {"hook_uses": [use]}

hook(latch) := {"key": "hook_use/hook", "made_for": "lifting", "latch": latch}

test_breaks_none if grades(hook("none")) == {"none"}

test_breaks_faulty if grades(hook("faulty")) == {"faulty"}

test_meets if grades(hook("works")) == set()

test_latch_unknown if grades({"key": "hook_use/hook", "made_for": "lifting"}) == set()
