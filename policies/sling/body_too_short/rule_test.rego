package liftlint.rules.sling.body_too_short_test

import data.liftlint.rules.sling.body_too_short.finding

grades(body, clear, least) := got if {
	got := {f.grade | some f in finding} with input as {"ropes": [{"key": "rope/S1", "body": body, "clear_rope_d": clear, "least_clear_rope_d": least}]}
}

test_breaks if grades("single_part", 9.9, 10) == {"too_short"}

test_breaks_by_what_the_profile_asks_for if grades("single_part", 19.9, 20) == {"too_short"}

test_breaks_braid if grades("multi_part", 11.9, 12) == {"too_short", "too_short_multi_part"}

test_breaks_cable_laid if grades("cable_laid", 9.9, 10) == {"too_short"}

test_meets_at_the_limit if grades("single_part", 10, 10) == set()

test_meets_braid_at_the_limit if grades("multi_part", 12, 12) == set()

test_unknown if finding == set() with input as {"ropes": [{"key": "rope/S1", "body": "single_part", "least_clear_rope_d": 10}]}

test_limit_unknown if finding == set() with input as {"ropes": [{"key": "rope/S1", "body": "multi_part", "clear_rope_d": 9}]}
