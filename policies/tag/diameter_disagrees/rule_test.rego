package liftlint.rules.tag.diameter_disagrees_test

import data.liftlint.rules.tag.diameter_disagrees.finding

gear(d) := {"gear": [{"key": "gear/S1", "kind": "wire_rope_sling", "uses": 1, "tag_names_diameter": true, "tag": {"diameter": d}}]}

test_breaks if finding == {"gear/S1"} with input as gear("differs")

test_meets if finding == set() with input as gear("agrees")

test_unknown if finding == set() with input as {"gear": [{"key": "gear/S1", "kind": "wire_rope_sling", "uses": 1, "tag_names_diameter": true, "tag": {}}]}
