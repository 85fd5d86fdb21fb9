package liftlint.rules.beam.category_missing_test

import data.liftlint.rules.beam.category_missing.finding

found(given) := got if got := finding with input as {"beams": [{"key": "beam/SB1", "category_given": given}]}

test_breaks if found(false) == {"beam/SB1"}

test_meets if found(true) == set()
