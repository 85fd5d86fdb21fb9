package liftlint.rules.bridle.lower_fitting_weak_test

import data.liftlint.rules.bridle.lower_fitting_weak.finding

found(ratio) := got if {
	got := {[f.key, f.names] | some f in finding} with input as {"bridles": [{"key": "bridle/B1", "lower_fittings": 2, "lower_fitting_over_leg_ratio": ratio, "weak_lower_fittings": {"at": "#/gear/1", "ids": ["X1", "X2"]}}]}
}

test_breaks if found(0.96) == {["bridle/B1", ["X1", "X2"]]}

test_meets_at_the_limit if found(0.97) == set()

test_unknown if finding == set() with input as {"bridles": [{"key": "bridle/B1", "lower_fittings": 2, "weak_lower_fittings": {"at": "#/gear/1", "ids": []}}]}
