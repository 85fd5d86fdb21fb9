package liftlint.rules.register.serials_differ_test

import data.liftlint.rules.register.serials_differ.finding

found(item) := got if got := finding with input as {"on_file": [item]}

item(places) := {"key": "on_file/S1", "uses": 1, "serials_unlike": places}

test_breaks if found(item(["register", "certificate"])) == {{"key": "on_file/S1", "names": ["register", "certificate"]}}

test_breaks_one_place if found(item(["tag"])) == {{"key": "on_file/S1", "names": ["tag"]}}

test_meets if found(item([])) == set()

test_gear_that_is_not_used if found({"key": "on_file/S1", "uses": 0, "serials_unlike": ["register", "tag"]}) == set()
