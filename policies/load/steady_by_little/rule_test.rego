package liftlint.rules.load.steady_by_little_test

import data.liftlint.rules.load.steady_by_little.finding

grades(rise) := got if {
	got := {f.grade | some f in finding} with input as {"loads": [{
		"key": "load",
		"hangs": "steady",
		"center_may_rise_m": rise,
	}]}
}

test_breaks_neutral if grades(0) == {"neutral", "little"}

test_breaks_neutral_under_a_millimeter if grades(0.0009999) == {"neutral", "little"}

test_breaks_little_at_a_millimeter if grades(0.001) == {"little"}

test_breaks_little if grades(0.049) == {"little"}

test_meets if grades(0.05) == set()
