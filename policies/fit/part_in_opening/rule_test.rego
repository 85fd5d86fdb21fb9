package liftlint.rules.fit.part_in_opening_test

import data.liftlint.rules.fit.part_in_opening.finding

found(fit) := got if got := finding with input as {"fits": [fit]}

test_breaks if found({"key": "fit/1", "what": "link_in_bow", "needs_m": 0.093, "room_m": 0.092}) == {"fit/1"}

test_meets if found({"key": "fit/1", "what": "link_in_bow", "needs_m": 0.092, "room_m": 0.092}) == set()

test_width_unknown if found({"key": "fit/1", "what": "part_in_link", "needs_m": 0.03}) == set()
