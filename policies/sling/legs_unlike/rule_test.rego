package liftlint.rules.sling.legs_unlike_test

import data.liftlint.rules.sling.legs_unlike.finding

found(unlike) := got if got := finding with input as {"lifts": [{"key": "lift", "legs": 2, "ropes_unlike": unlike}]}

test_breaks if found(true) == {"lift"}

test_meets if found(false) == set()
