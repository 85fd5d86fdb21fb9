package liftlint.rules.sling.component_and_body_disagree_test

import data.liftlint.rules.sling.component_and_body_disagree.finding

grades(body, agrees) := got if {
	got := {f.grade | some f in finding} with input as {"ropes": [{"key": "rope/S1", "body": body, "body_over_components_agrees": agrees}]}
}

test_breaks if grades("multi_part", "no") == {"disagree"}

test_breaks_where_not_known if grades("multi_part", "lay_up_not_known") == {"not_known"}

test_meets if grades("multi_part", "yes") == set()

test_breaks_cable_laid if grades("cable_laid", "no") == {"cable_laid", "disagree"}

test_meets_cable_laid if grades("cable_laid", "yes") == set()

test_unknown if finding == set() with input as {"ropes": [{"key": "rope/S1", "body": "multi_part"}]}
