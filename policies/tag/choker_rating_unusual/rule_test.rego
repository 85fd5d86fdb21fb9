package liftlint.rules.tag.choker_rating_unusual_test

import data.liftlint.rules.tag.choker_rating_unusual.finding

grades(ratio) := got if {
	got := {f.grade | some f in finding} with input as {"gear": [{"key": "gear/S1", "kind": "wire_rope_sling", "uses": 1, "tag": {"state": "legible"}, "tag_names_choker_rating": true, "choker_over_vertical_ratio": ratio}]}
}

test_breaks_far_over if grades(1.001) == {"far_over", "over"}

test_breaks_over if grades(0.821) == {"over"}

test_meets_the_error_alone if grades(1) == {"over"}

test_meets_at_the_limit if grades(0.82) == set()

test_unknown if {
	finding == set() with input as {"gear": [{"key": "gear/S1", "kind": "wire_rope_sling", "uses": 1, "tag": {"state": "legible"}, "tag_names_choker_rating": true}]}
}

test_breaks_far_under if grades(0.499) == {"far_under"}

test_meets_from_half_on if grades(0.5) == set()

test_mesh_is_rated_otherwise if {
	finding == set() with input as {"gear": [{"key": "gear/M1", "kind": "mesh_sling", "uses": 1, "tag": {"state": "legible"}, "tag_names_choker_rating": true, "choker_over_vertical_ratio": 1.5}]}
}
