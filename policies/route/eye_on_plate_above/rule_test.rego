package liftlint.rules.route.eye_on_plate_above_test

import data.liftlint.rules.route.eye_on_plate_above.finding

found(eyes) := got if got := finding with input as {"legs": [{"key": "leg", "eyes_on_plates_above": eyes}]}

test_breaks_with_one_eye if found(1) == {"leg"}

test_meets_without if found(0) == set()
