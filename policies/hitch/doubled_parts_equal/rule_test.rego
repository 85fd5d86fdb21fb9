package liftlint.rules.hitch.doubled_parts_equal_test

import data.liftlint.rules.hitch.doubled_parts_equal.finding

found(doubled, equal) := got if {
	got := finding with input as {"legs": [{"key": "leg/hook/1", "doubled": doubled, "parts_taken_equal": equal}]}
}

test_breaks if found(true, true) == {"leg/hook/1"}

test_meets_uneven if found(true, false) == set()

test_not_doubled if found(false, true) == set()
