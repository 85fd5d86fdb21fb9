package liftlint.rules.sling.no_tucks_when_critical_test

import data.liftlint.rules.sling.no_tucks_when_critical.finding

ropes(kinds) := {"ropes": [{"key": "rope/S1", "eye_kinds": kinds}]}

test_breaks if finding == {"rope/S1"} with input as ropes(["flemish_sleeve", "hand_tucked"])

test_meets if finding == set() with input as ropes(["flemish_sleeve"])
