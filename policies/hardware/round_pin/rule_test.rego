package liftlint.rules.hardware.round_pin_test

import data.liftlint.rules.hardware.round_pin.finding

gear(pin) := {"gear": [{"key": "gear/K1", "kind": "shackle", "uses": 1, "pin_kind": pin}]}

test_breaks if finding == {"gear/K1"} with input as gear("round")

test_meets_screw if finding == set() with input as gear("screw")

test_meets_bolt if finding == set() with input as gear("bolt")
