package liftlint.rules.fit.legs_on_pin_test

import data.liftlint.rules.fit.legs_on_pin.finding

found(gather) := got if got := finding with input as {"gathers": [gather]}

test_breaks if found({"key": "gather/hook/K9", "what": "pin", "on_pin": true}) == {"gather/hook/K9"}

test_meets_in_the_bow if found({"key": "gather/hook/K9", "what": "bow", "on_pin": false}) == set()

test_end_unknown if found({"key": "gather/hook/K9", "what": "shackle"}) == set()
