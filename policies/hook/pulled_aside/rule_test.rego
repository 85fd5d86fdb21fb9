package liftlint.rules.hook.pulled_aside_test

import data.liftlint.rules.hook.pulled_aside.finding

grades(hook) := got if got := {f.grade | some f in finding} with input as {"hooks": [hook]}

hook(several, lean) := {"key": "hook/head", "of_several": several, "lean_from_plumb_deg": lean}

test_breaks_over_3 if grades(hook(true, 3.01)) == {"far", "somewhat"}

test_breaks_over_1 if grades(hook(true, 1.01)) == {"somewhat"}

test_breaks_at_3_somewhat if grades(hook(true, 3)) == {"somewhat"}

test_meets_at_1 if grades(hook(true, 1)) == set()

test_one_hook_stands_over_its_load if grades(hook(false, 4)) == set()

test_lean_unknown if grades({"key": "hook/head", "of_several": true}) == set()
