package liftlint.rules.load.insert_weak_test

import data.liftlint.rules.load.insert_weak.finding

grades(panel, insert, hardware) := got if {
	got := {f.grade | some f in finding} with input as {"attachments": [{
		"key": "attachment/A", "kind": "insert", "legs": 1, "panel": panel,
		"breaking_over_pull_ratio": insert, "hardware_breaking_over_pull_ratio": hardware,
	}]}
}

test_breaks_tilt_up if grades("tilt_up", 1.99, 5) == {"tilt_up"}

test_breaks_other if grades("other", 3.99, 5) == {"other"}

test_breaks_hardware if grades("other", 4, 4.99) == {"hardware"}

test_meets_tilt_up if grades("tilt_up", 2, 5) == set()

test_meets_other if grades("other", 4, 5) == set()
