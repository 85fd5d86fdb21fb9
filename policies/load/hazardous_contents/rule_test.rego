package liftlint.rules.load.hazardous_contents_test

import data.liftlint.rules.load.hazardous_contents.finding

grades(contents, hazard) := got if {
	got := {f.grade | some f in finding} with input as {"loads": [{"key": "load", "contents": contents, "hazard": hazard}]}
}

test_breaks if grades("secured", "without_precaution") == {"without_precaution"}

test_breaks_not_given_secured if grades("secured", "not_given") == {"not_given"}

test_breaks_not_given_loose if grades("loose", "not_given") == {"not_given"}

test_meets_precaution if grades("secured", "with_precaution") == set()

test_meets_none if grades("secured", "none") == set()

test_nothing_said_of_contents if grades("not_given", "not_given") == set()
