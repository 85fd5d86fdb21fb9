package liftlint.rules.load.steady_by_little_test

import data.liftlint.rules.load.steady_by_little.finding

grades(righting, rise) := got if {
	got := {f.grade | some f in finding} with input as {"loads": [{
		"key": "load",
		"hangs": "steady",
		"righting_m": righting,
		"center_may_rise_m": rise,
	}]}
}

test_breaks_neutral if grades(0, 0) == {"neutral", "little"}

test_breaks_neutral_under_a_millimeter if grades(0.0009999, 1) == {"neutral"}

test_breaks_little_at_a_millimeter if grades(0.001, 0.001) == {"little"}

test_breaks_little if grades(0.049, 0.049) == {"little"}

test_a_slow_turn_about_the_vertical_is_no_fall if grades(0.02, 0.3) == set()

test_meets if grades(0.05, 0.05) == set()
