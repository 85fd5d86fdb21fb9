package liftlint.rules.bridle.intermediate_link_weak_test

import data.liftlint.rules.bridle.intermediate_link_weak.finding

found(bridle) := got if got := finding with input as {"bridles": [bridle]}

test_breaks if found({"key": "bridle/B1", "intermediate_links": 2, "intermediate_over_leg_ratio": 1.54}) == {"bridle/B1"}

test_meets_at_the_limit if found({"key": "bridle/B1", "intermediate_links": 2, "intermediate_over_leg_ratio": 1.55}) == set()

test_unknown if found({"key": "bridle/B1", "intermediate_links": 2}) == set()
