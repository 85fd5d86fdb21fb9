package liftlint.rules.bridle.lower_fitting_weak_test

import data.liftlint.rules.bridle.lower_fitting_weak.finding

found(bridle) := got if got := finding with input as {"bridles": [bridle]}

test_breaks if found({"key": "bridle/B1", "lower_fittings": 4, "lower_fitting_over_leg_ratio": 0.96}) == {"bridle/B1"}

test_meets_at_the_limit if found({"key": "bridle/B1", "lower_fittings": 4, "lower_fitting_over_leg_ratio": 0.97}) == set()

test_unknown if found({"key": "bridle/B1", "lower_fittings": 4}) == set()
