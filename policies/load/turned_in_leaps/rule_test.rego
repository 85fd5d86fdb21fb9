package liftlint.rules.load.turned_in_leaps_test

import data.liftlint.rules.load.turned_in_leaps.finding

found(step) := got if got := finding with input as {"loads": [{"key": "load", "pitch_step_deg": step}]}

test_breaks_over_15_deg if found(15.1) == {"load"}

test_meets_at_15_deg if found(15) == set()
