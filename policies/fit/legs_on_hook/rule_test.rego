package liftlint.rules.fit.legs_on_hook_test

import data.liftlint.rules.fit.legs_on_hook.finding

hooks(n) := {"hooks": [{"key": "hook/hook", "legs_direct": n}]}

test_breaks if finding == {"hook/hook"} with input as hooks(3)

test_meets if finding == set() with input as hooks(2)
