package liftlint.rules.sling.temperature_test

import data.liftlint.rules.sling.temperature.finding

grades(rope) := got if got := {f.grade | some f in finding} with input as {"ropes": [rope]}

rope(core, sleeves, low, high) := {
	"key": "rope/S1", "temperature_given": true,
	"core": core, "sleeves": sleeves, "lowest_c": low, "highest_c": high,
}

test_breaks_fiber if grades(rope("fiber", ["steel"], 10, 83)) == {"fiber_core"}

test_breaks_unknown_core if grades(rope("not_given", ["steel"], 10, 83)) == {"fiber_core"}

test_meets_at_the_limit_of_fiber if grades(rope("fiber", ["steel"], 10, 82)) == set()

test_meets_with_a_steel_core if grades(rope("iwrc", ["steel"], 10, 204)) == set()

test_breaks_aluminum if grades(rope("iwrc", ["aluminum"], 10, 151)) == {"aluminum_sleeve"}

test_breaks_unknown_sleeves if grades(rope("iwrc", ["steel", "not_given"], 10, 151)) == {"aluminum_sleeve"}

test_breaks_aluminum_beyond_all if grades(rope("iwrc", ["aluminum"], 10, 205)) == {"aluminum_sleeve", "hot"}

test_breaks_steel_sleeves if grades(rope("iwrc", ["steel"], 10, 205)) == {"hot"}

test_breaks_without_sleeves if grades(rope("iwrc", [], 10, 205)) == {"hot"}

test_breaks_cold if grades(rope("iwrc", ["steel"], -41, 20)) == {"cold"}

test_meets_at_the_limit_of_cold if grades(rope("iwrc", ["steel"], -40, 20)) == set()

test_unknown if grades({"key": "rope/S1", "temperature_given": true, "core": "iwrc", "sleeves": []}) == set()

test_meets_aluminum_at_the_limit if grades(rope("iwrc", ["aluminum"], 10, 150)) == set()

test_meets_unknown_sleeves_at_the_limit if grades(rope("iwrc", ["not_given"], 10, 150)) == set()
