package liftlint.rules.hitch.choke_pin_on_running_part_test

import data.liftlint.rules.hitch.choke_pin_on_running_part.finding

grades(kind, pin_in) := got if {
	got := {f.grade | some f in finding} with input as {"hitches": [{"key": "hitch/hook/1", "kind": kind, "pin_in": pin_in}]}
}

test_breaks_on_the_running_part if grades("choke", "running_part") == {"on_running_part"}

test_breaks_not_given if grades("choke", "not_given") == {"not_given"}

test_meets_in_the_eye if grades("choke", "eye") == set()

test_without_a_shackle if grades("choke", "none") == set()

test_baskets_have_none if grades("basket", "running_part") == set()
