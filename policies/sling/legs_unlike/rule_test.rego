package liftlint.rules.sling.legs_unlike_test

import data.liftlint.rules.sling.legs_unlike.finding

found(unlike) := got if got := finding with input as {"lifts": [{"key": "lift", "legs": 2, "legs_unlike": {"at": "#/gear/1", "how": unlike}}]}

test_breaks if found("S1 and S2 are unlike in diameter") == {"lift"}

test_meets if found("") == set()
