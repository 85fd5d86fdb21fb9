package liftlint.rules.bend.softener_not_secured_test

import data.liftlint.rules.bend.softener_not_secured.finding

grades(protected, secured) := got if {
	got := {f.grade | some f in finding} with input as {"hitches": [{"key": "hitch/hook/1", "edges_protected": protected, "softener_secured": secured}]}
}

test_breaks if grades(true, "no") == {"not_secured"}

test_breaks_where_not_given if grades(true, "not_given") == {"not_given"}

test_meets if grades(true, "yes") == set()

test_bare_edges_are_another_rule if grades(false, "none") == set()
