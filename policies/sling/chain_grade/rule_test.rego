package liftlint.rules.sling.chain_grade_test

import data.liftlint.rules.sling.chain_grade.finding

grades(uses, grade) := got if {
	got := {f.grade | some f in finding} with input as {"gear": [{"key": "gear/C1", "kind": "chain_sling", "uses": uses, "chain_grade": grade}]}
}

test_breaks_with_grade_43 if grades(1, "43") == {"not_for_lifting"}

test_breaks_with_grade_70 if grades(1, "70") == {"not_for_lifting"}

test_breaks_where_not_given if grades(1, "not_given") == {"not_given"}

test_meets_with_grade_80 if grades(1, "80") == set()

test_meets_with_grade_120 if grades(1, "120") == set()

test_gear_that_is_not_used if grades(0, "43") == set()
