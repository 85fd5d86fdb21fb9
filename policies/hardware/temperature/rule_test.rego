package liftlint.rules.hardware.temperature_test

import data.liftlint.rules.hardware.temperature.finding

grades(steel, low, high) := got if {
	got := {f.grade | some f in finding} with input as {"gear": [{"key": "gear/K1", "kind": "shackle", "steel": steel, "uses": 1, "temperature_given": true, "lowest_c": low, "highest_c": high}]}
}

others := {"carbon", "alloy", "grade_12", "not_given"}

test_breaks_hot if {
	every steel in others { grades(steel, 0, 204.1) == {"hot"} }
}

test_breaks_cold if {
	every steel in others { grades(steel, -40.1, 20) == {"cold"} }
}

test_breaks_both if grades("alloy", -41, 205) == {"hot", "cold"}

test_breaks_graded if {
	every steel in {"grade_8", "grade_10"} { grades(steel, -41, 539) == {"graded_hot", "graded_cold"} }
}

test_meets if {
	every steel in others { grades(steel, -40, 204) == set() }
}

test_meets_graded if {
	every steel in {"grade_8", "grade_10"} { grades(steel, -40, 538) == set() }
}

test_breaks_hot_by_one_limit if grades("alloy", 0, 600) == {"hot"}
