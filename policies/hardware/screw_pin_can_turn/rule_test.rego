package liftlint.rules.hardware.screw_pin_can_turn_test

import data.liftlint.rules.hardware.screw_pin_can_turn.finding

grades(by, uses) := got if {
	got := {f.grade | some f in finding} with input as {"gear": [{"key": "gear/K1", "kind": "shackle", "uses": uses, "pin_turned_by": by}]}
}

test_breaks_left if grades("time", 1) == {"left_in_place"}

test_breaks_turned if grades("turning_load", 1) == {"turned"}

test_meets if grades("nothing", 1) == set()

test_not_used if grades("time", 0) == set()
