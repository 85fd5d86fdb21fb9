package liftlint.rules.sling.lays_joined_test

import data.liftlint.rules.sling.lays_joined.finding

found(leg) := got if got := finding with input as {"legs": [leg]}

test_breaks if found({"key": "leg/1", "slings": 2, "lays_joined": "unlike"}) == {"leg/1"}

test_meets if found({"key": "leg/1", "slings": 2, "lays_joined": "alike"}) == set()

test_unknown if found({"key": "leg/1", "slings": 2}) == set()
