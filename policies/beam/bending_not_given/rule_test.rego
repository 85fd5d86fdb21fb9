package liftlint.rules.beam.bending_not_given_test

import data.liftlint.rules.beam.bending_not_given.finding

found(kind, rated, moment) := got if {
	got := finding with input as {"beams": [{"key": "beam/LB1", "kind": kind, "bending_rated": rated, "bending_nm": moment}]}
}

test_breaks if found("lifting_beam", false, 1) == {"beam/LB1"}

test_meets_without_bending if found("lifting_beam", false, 0) == set()

test_meets_where_it_is_rated if found("lifting_beam", true, 9000) == set()

test_spreaders_are_another_rule if found("spreader_beam", false, 9000) == set()

test_bending_not_known if {
	count(finding) == 0 with input as {"beams": [{"key": "beam/LB1", "kind": "lifting_beam", "bending_rated": false}]}
}
