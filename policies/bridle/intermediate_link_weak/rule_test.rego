package liftlint.rules.bridle.intermediate_link_weak_test

import data.liftlint.rules.bridle.intermediate_link_weak.finding

found(ratio) := got if {
	got := {[f.key, f.names] | some f in finding} with input as {"bridles": [{"key": "bridle/B1", "intermediate_links": 2, "intermediate_over_leg_ratio": ratio, "weak_intermediate_links": {"at": "#/gear/1", "ids": ["X1", "X2"]}}]}
}

test_breaks if found(1.54) == {["bridle/B1", ["X1", "X2"]]}

test_meets_at_the_limit if found(1.55) == set()

test_unknown if finding == set() with input as {"bridles": [{"key": "bridle/B1", "intermediate_links": 2, "weak_intermediate_links": {"at": "#/gear/1", "ids": []}}]}
