package liftlint.rules.beam.compression_over_rated_test

import data.liftlint.rules.beam.compression_over_rated.finding

found(rated, ratio) := got if {
	got := finding with input as {"beams": [{"key": "beam/SB1", "compression_rated": rated, "compression_over_rated_ratio": ratio}]}
}

test_breaks if found(true, 1.001) == {"beam/SB1"}

test_meets_at_its_rating if found(true, 1) == set()

test_not_rated_so if found(false, 2) == set()

test_not_known if finding == set() with input as {"beams": [{"key": "beam/SB1", "compression_rated": true}]}
