package liftlint.rules.tag.design_factor_low_test

import data.liftlint.rules.tag.design_factor_low.finding

gear(f) := {"gear": [{"key": "gear/S1", "kind": "wire_rope_sling", "uses": 1, "tag_names_design_factor": true, "tag": {"design_factor": f}}]}

test_breaks if finding == {"gear/S1"} with input as gear(4.9)

test_meets if finding == set() with input as gear(5)
