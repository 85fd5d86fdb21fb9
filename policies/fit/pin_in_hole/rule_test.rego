package liftlint.rules.fit.pin_in_hole_test

import data.liftlint.rules.fit.pin_in_hole.finding

grades(fit) := got if got := {f.grade | some f in finding} with input as {"fits": [fit]}

pin(what, pin, hole, filled) := {"key": "fit/1", "what": what, "needs_m": pin, "room_m": hole, "filled_ratio": filled}

test_breaks_too_thick if grades(pin("pin_in_hole", 0.026, 0.025, 1.04)) == {"too_thick"}

test_breaks_play if grades(pin("pin_in_hole", 0.0187, 0.025, 0.748)) == {"play"}

test_meets_at_a_quarter_of_play if grades(pin("pin_in_hole", 0.01875, 0.025, 0.75)) == set()

test_meets_in_a_hole_of_its_size if grades(pin("pin_in_hole", 0.025, 0.025, 1)) == set()

test_a_ring_is_wide if grades(pin("pin_in_ring", 0.02, 0.04, 0.5)) == set()

test_breaks_in_a_ring if grades(pin("pin_in_ring", 0.041, 0.04, 1.02)) == {"too_thick"}

test_unknown if grades({"key": "fit/1", "what": "pin_in_hole"}) == set()

test_breaks_on_the_widths_alone if grades({"key": "fit/1", "what": "pin_in_hole", "needs_m": 2, "room_m": 1}) == {"too_thick"}
