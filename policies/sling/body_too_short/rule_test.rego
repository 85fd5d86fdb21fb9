package liftlint.rules.sling.body_too_short_test

import data.liftlint.rules.sling.body_too_short.finding

grades(tucked, clear) := got if {
	got := {f.grade | some f in finding} with input as {"ropes": [{"key": "rope/S1", "tucked_splices": tucked, "clear_rope_d": clear}]}
}

test_breaks if grades(false, 9.9) == {"too_short"}

test_breaks_tucked if grades(true, 9.9) == {"too_short_tucked"}

test_meets_at_the_limit if grades(false, 10) == set()

test_meets_tucked_at_the_limit if grades(true, 10) == set()

test_unknown if finding == set() with input as {"ropes": [{"key": "rope/S1", "tucked_splices": false}]}
