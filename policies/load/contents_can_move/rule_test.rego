package liftlint.rules.load.contents_can_move_test

import data.liftlint.rules.load.contents_can_move.finding

grades(contents) := got if {
	got := {f.grade | some f in finding} with input as {"loads": [{"key": "load", "contents": contents}]}
}

test_breaks_loose if grades("loose") == {"loose"}

test_breaks_not_given if grades("not_given") == {"not_given"}

test_meets_secured if grades("secured") == set()

test_meets_none if grades("none") == set()
