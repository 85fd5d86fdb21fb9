package liftlint.rules.tag.basket_rating_unusual_test

import data.liftlint.rules.tag.basket_rating_unusual.finding

grades(ratio) := got if {
	got := {f.grade | some f in finding} with input as {"gear": [{"key": "gear/S1", "uses": 1, "tag": {"state": "legible"}, "tag_names_basket_rating": true, "basket_over_vertical_ratio": ratio}]}
}

test_breaks_far_over if grades(2.21) == {"far_over", "over"}

test_breaks_over if grades(2.061) == {"over"}

test_meets_the_error_alone if grades(2.2) == {"over"}

test_meets_at_the_limit if grades(2.06) == set()

test_unknown if {
	finding == set() with input as {"gear": [{"key": "gear/S1", "uses": 1, "tag": {"state": "legible"}, "tag_names_basket_rating": true}]}
}
