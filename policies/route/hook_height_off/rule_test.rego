package liftlint.rules.route.hook_height_off_test

import data.liftlint.rules.route.hook_height_off.finding

found(off) := got if got := finding with input as {"hooks": [{"key": "hook", "height_given": true, "height_off_m": off}]}

test_breaks_over_100_mm if found(0.101) == {"hook"}

test_meets_at_100_mm if found(0.1) == set()
