package liftlint.rules.beam.span_over_rated_test

import data.liftlint.rules.beam.span_over_rated.finding

found(given, ratio) := got if {
	got := finding with input as {"beams": [{"key": "beam/SB1", "span_rated_for_given": given, "span_over_rated_ratio": ratio}]}
}

test_breaks if found(true, 1.002) == {"beam/SB1"}

test_meets_at_its_span if found(true, 1.001) == set()

test_no_span_given if found(false, 2) == set()

test_unknown if finding == set() with input as {"beams": [{"key": "beam/SB1", "span_rated_for_given": true}]}
