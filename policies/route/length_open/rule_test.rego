package liftlint.rules.route.length_open_test

import data.liftlint.rules.route.length_open.finding

found(open) := got if got := finding with input as {"legs": [{"key": "leg/hook/1", "length_open": open}]}

test_breaks if found(true) == {"leg/hook/1"}

test_meets if found(false) == set()
