package liftlint.rules.fit.legs_spread_in_bow_test

import data.liftlint.rules.fit.legs_spread_in_bow.finding

found(gather) := got if got := finding with input as {"gathers": [gather]}

test_breaks if found({"key": "gather/hook/K9", "what": "bow", "included_angle_deg": 120.1}) == {"gather/hook/K9"}

test_meets if found({"key": "gather/hook/K9", "what": "bow", "included_angle_deg": 120}) == set()

test_angle_unknown if found({"key": "gather/hook/K9", "what": "bow"}) == set()
