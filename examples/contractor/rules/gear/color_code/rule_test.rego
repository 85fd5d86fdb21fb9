package liftlint.rules.gear.color_code_test

import data.liftlint.rules.gear.color_code.finding

grades(labels) := got if {
	got := {f.grade | some f in finding} with input as {"gear": [{"key": "gear/S1", "uses": 1, "in_bridle": false, "labels": labels}]}
}

test_breaks_other_color if grades(["color_code=red"]) == {"other_color"}

test_breaks_no_color if grades([]) == {"no_color"}

test_breaks_another_label if grades(["shelf=green"]) == {"no_color"}

test_meets if grades(["color_code=green"]) == set()

test_not_used if {
	finding == set() with input as {"gear": [{"key": "gear/S1", "uses": 0, "in_bridle": false, "labels": []}]}
}

test_part_of_a_bridle if {
	finding == set() with input as {"gear": [{"key": "gear/S1", "uses": 1, "in_bridle": true, "labels": []}]}
}
