package liftlint.rules.load.concrete_too_young_test

import data.liftlint.rules.load.concrete_too_young.finding

points(strength, needed) := {"attachments": [{"key": "attachment/A", "kind": "insert", "legs": 1, "concrete_strength_pa": strength, "concrete_strength_needed_pa": needed}]}

test_breaks if finding == {"attachment/A"} with input as points(14900000, 15000000)

test_meets if finding == set() with input as points(15000000, 15000000)
