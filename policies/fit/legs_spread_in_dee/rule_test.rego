package liftlint.rules.fit.legs_spread_in_dee_test

import data.liftlint.rules.fit.legs_spread_in_dee.finding

found(gather) := got if got := finding with input as {"gathers": [gather]}

test_breaks if found({"key": "gather/hook/K9", "what": "bow", "pattern": "dee", "included_angle_deg": 10.1}) == {"gather/hook/K9"}

test_meets if found({"key": "gather/hook/K9", "what": "bow", "pattern": "dee", "included_angle_deg": 10}) == set()

test_unknown if found({"key": "gather/hook/K9", "what": "bow", "pattern": "dee"}) == set()

test_meets_bow if found({"key": "gather/hook/K9", "what": "bow", "pattern": "bow", "included_angle_deg": 60}) == set()

test_pattern_unknown if found({"key": "gather/hook/K9", "what": "bow", "included_angle_deg": 60}) == set()
