package liftlint.rules.load.insert_weak_test

import data.liftlint.rules.load.insert_weak.finding

grades(panel, insert, hardware) := grades_of({
	"key": "attachment/A", "kind": "insert", "legs": 1, "panel": panel,
	"breaking_over_pull_times": insert, "hardware_breaking_over_pull_times": hardware,
})

grades_of(record) := got if got := {f.grade | some f in finding} with input as {"attachments": [record]}

test_breaks_tilt_up if grades("tilt_up", 1.99, 5) == {"tilt_up"}

test_breaks_other if grades("other", 3.99, 5) == {"other"}

test_breaks_hardware if grades("other", 4, 4.99) == {"hardware"}

test_meets_tilt_up if grades("tilt_up", 2, 5) == set()

test_meets_other if grades("other", 4, 5) == set()

test_meets_tilt_up_by_less_than_other_members_need if grades("tilt_up", 3.9, 5) == set()

test_breaks_other_by_more_than_a_panel_needs if grades("other", 1.9, 5) == {"other"}

test_breaks_hardware_in_an_unknown_panel if {
	grades_of({
		"key": "attachment/A", "kind": "insert", "legs": 1,
		"breaking_over_pull_times": 1, "hardware_breaking_over_pull_times": 4.9,
	}) == {"hardware"}
}
