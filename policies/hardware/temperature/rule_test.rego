package liftlint.rules.hardware.temperature_test

import data.liftlint.rules.hardware.temperature.finding

grades(low, high) := got if {
	got := {f.grade | some f in finding} with input as {"gear": [{"key": "gear/K1", "kind": "shackle", "uses": 1, "temperature_given": true, "lowest_c": low, "highest_c": high}]}
}

test_breaks_hot if grades(0, 204.1) == {"hot"}

test_breaks_cold if grades(-40.1, 20) == {"cold"}

test_breaks_both if grades(-41, 205) == {"hot", "cold"}

test_meets if grades(-40, 204) == set()
