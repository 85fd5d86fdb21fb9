package liftlint.rules.bridle.legs_unmatched_test

import data.liftlint.rules.bridle.legs_unmatched.finding

found(bridle) := got if got := finding with input as {"bridles": [bridle]}

test_breaks if found({"key": "bridle/B1", "legs": 4, "length_spread_d": 1.01}) == {"bridle/B1"}

test_meets_at_the_limit if found({"key": "bridle/B1", "legs": 4, "length_spread_d": 1}) == set()

test_unknown if found({"key": "bridle/B1", "legs": 4}) == set()
