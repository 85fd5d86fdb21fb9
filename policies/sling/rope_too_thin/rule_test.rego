package liftlint.rules.sling.rope_too_thin_test

import data.liftlint.rules.sling.rope_too_thin.finding

found(rope) := got if got := finding with input as {"ropes": [rope]}

test_breaks if found({"key": "rope/S1", "diameter_m": 0.0059}) == {"rope/S1"}

test_meets_at_the_limit if found({"key": "rope/S1", "diameter_m": 0.006}) == set()

test_unknown if found({"key": "rope/S1"}) == set()
