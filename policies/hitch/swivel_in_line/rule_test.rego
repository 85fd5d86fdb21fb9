package liftlint.rules.hitch.swivel_in_line_test

import data.liftlint.rules.hitch.swivel_in_line.finding

grades(swivel) := got if {
	got := {f.grade | some f in finding} with input as {"legs": [{"key": "leg/hook/1", "swivel_in_line": swivel}]}
}

test_breaks if grades("load_bearing") == {"load_bearing"}

test_breaks_where_not_given if grades("not_given") == {"not_given"}

test_meets if grades("no") == set()
