package liftlint.rules.register.rated_loads_differ_test

import data.liftlint.rules.register.rated_loads_differ.finding

found(item) := got if got := finding with input as {"on_file": [item]}

item(places) := {"key": "on_file/S1", "uses": 1, "rated_loads_unlike": places}

test_breaks if found(item(["register", "tag"])) == {{"key": "on_file/S1", "names": ["register", "tag"]}}

test_breaks_one_place if found(item(["tag"])) == {{"key": "on_file/S1", "names": ["tag"]}}

test_meets if found(item([])) == set()

test_gear_that_is_not_used if found({"key": "on_file/S1", "uses": 0, "rated_loads_unlike": ["register", "tag"]}) == set()
