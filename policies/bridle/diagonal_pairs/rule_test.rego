package liftlint.rules.bridle.diagonal_pairs_test

import data.liftlint.rules.bridle.diagonal_pairs.finding

found(bridle) := got if got := finding with input as {"bridles": [bridle]}

test_breaks if found({"key": "bridle/B1", "grouped_as": "diagonal"}) == {"bridle/B1"}

test_meets if found({"key": "bridle/B1", "grouped_as": "adjacent"}) == set()

test_meets_where_it_does_not_matter if found({"key": "bridle/B1", "grouped_as": "does_not_matter"}) == set()

test_unknown if found({"key": "bridle/B1"}) == set()
