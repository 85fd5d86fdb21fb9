package liftlint.rules.tag.rating_over_section_test

import data.liftlint.rules.tag.rating_over_section.finding

found(ratio) := got if {
	got := finding with input as {"gear": [{"key": "gear/K1", "uses": 1, "section_held": true, "rated_over_section_ratio": ratio}]}
}

test_breaks if found(1.001) == {"gear/K1"}

test_meets if found(1) == set()

test_unknown if finding == set() with input as {"gear": [{"key": "gear/K1", "uses": 1, "section_held": true}]}
