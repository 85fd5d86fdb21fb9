package liftlint.rules.grommet.component_and_body_disagree_test

import data.liftlint.rules.grommet.component_and_body_disagree.finding

found(agrees) := got if {
	got := finding with input as {"grommets": [{"key": "grommet/G1", "laid": "cable_laid", "body_over_components_agrees": agrees}]}
}

test_breaks if found("no") == {"grommet/G1"}

test_meets if found("yes") == set()

test_unknown if finding == set() with input as {"grommets": [{"key": "grommet/G1", "laid": "cable_laid"}]}
