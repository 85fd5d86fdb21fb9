package liftlint.rules.hook.pulled_aside_test

import data.liftlint.rules.hook.pulled_aside.finding

found(hook) := got if got := finding with input as {"hooks": [hook]}

hook(several, lean) := {"key": "hook/head", "of_several": several, "lean_from_plumb_deg": lean}

test_breaks_over_3 if found(hook(true, 3.01)) == {"hook/head"}

test_meets_at_3 if found(hook(true, 3)) == set()

test_one_hook_stands_over_its_load if found(hook(false, 4)) == set()

test_lean_unknown if found({"key": "hook/head", "of_several": true}) == set()
