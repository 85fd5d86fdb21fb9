package liftlint.rules.beam.tilts_test

import data.liftlint.rules.beam.tilts.finding

found(kind, deg) := got if got := finding with input as {"beams": [{"key": "beam/SB1", "kind": kind, "tilt_deg": deg}]}

test_breaks_spreader if found("spreader_beam", 2.1) == {"beam/SB1"}

test_breaks_lifting_beam if found("lifting_beam", 2.1) == {"beam/SB1"}

test_meets_within_2_degrees if found("spreader_beam", 2) == set()

test_rocker_plates_turn if found("rocker_plate", 20) == set()

test_not_known_how_it_hangs if finding == set() with input as {"beams": [{"key": "beam/SB1", "kind": "spreader_beam"}]}
