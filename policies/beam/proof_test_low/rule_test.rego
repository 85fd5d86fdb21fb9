package liftlint.rules.beam.proof_test_low_test

import data.liftlint.rules.beam.proof_test_low.finding

grades(given, dated, ratio) := got if {
	got := {f.grade | some f in finding} with input as {"beams": [{"key": "beam/SB1", "on_file": false, "proof_test_given": given, "proof_test_dated": dated, "proof_test_ratio": ratio, "proof_test_after_lift": false}]}
}

after(dated, late) := got if {
	got := {f.grade | some f in finding} with input as {"beams": [{"key": "beam/SB1", "on_file": false, "proof_test_given": true, "proof_test_dated": dated, "proof_test_ratio": 1.25, "proof_test_after_lift": late}]}
}

test_breaks_after_the_lift if after(true, true) == {"after_lift"}

test_meets_before_the_lift if after(true, false) == set()

test_no_day_is_another_grade if after(false, true) == {"not_dated"}

test_breaks if grades(true, true, 1.249) == {"low"}

test_breaks_over_the_most if grades(true, true, 1.251) == {"high"}

test_breaks_without_a_day if grades(true, false, 1.25) == {"not_dated"}

test_meets_at_the_limit if grades(true, true, 1.25) == set()

test_none_is_another_rule if grades(false, false, 0) == set()

test_on_file_is_another_rule if {
	finding == set() with input as {"beams": [{"key": "beam/SB1", "on_file": true, "proof_test_given": true, "proof_test_dated": true, "proof_test_ratio": 1}]}
}

test_day_of_the_lift_unknown if {
	finding == set() with input as {"beams": [{"key": "beam/SB1", "on_file": false, "proof_test_given": true, "proof_test_dated": true, "proof_test_ratio": 1.25}]}
}

test_load_unknown if {
	finding == set() with input as {"beams": [{"key": "beam/SB1", "on_file": false, "proof_test_given": true, "proof_test_dated": true}]}
}
