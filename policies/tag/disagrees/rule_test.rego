package liftlint.rules.tag.disagrees_test

import data.liftlint.rules.tag.disagrees.finding

gear(what) := {"gear": [{"key": "gear/S1", "kind": "wire_rope_sling", "uses": 1, "tag_names_make": true, "tag": {"disagrees_in": what}}]}

test_breaks if finding == {"gear/S1"} with input as gear("diameter")

test_meets if finding == set() with input as gear("none")

test_unknown if finding == set() with input as {"gear": [{"key": "gear/S1", "kind": "wire_rope_sling", "uses": 1, "tag_names_make": true, "tag": {}}]}
