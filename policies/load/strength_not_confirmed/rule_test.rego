package liftlint.rules.load.strength_not_confirmed_test

import data.liftlint.rules.load.strength_not_confirmed.finding

loads(confirmed, angle) := {"loads": [{"key": "load", "strength_confirmed": confirmed, "flattest_leg_from_horizontal_deg": angle}]}

test_breaks if finding == {"load"} with input as loads(false, 84.9)

test_meets_plumb if finding == set() with input as loads(false, 85)

test_meets_confirmed if finding == set() with input as loads(true, 45)
