package liftlint.rules.fit.crowded_test

import data.liftlint.rules.fit.crowded.finding

found(gather) := got if got := finding with input as {"gathers": [gather]}

test_breaks if found({"key": "gather/hook", "needs_m": 0.071, "room_m": 0.07}) == {"gather/hook"}

test_meets if found({"key": "gather/hook", "needs_m": 0.07, "room_m": 0.07}) == set()

test_room_unknown if found({"key": "gather/hook", "needs_m": 0.07}) == set()

test_needs_unknown if found({"key": "gather/hook", "room_m": 0.07}) == set()
