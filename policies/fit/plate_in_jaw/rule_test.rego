package liftlint.rules.fit.plate_in_jaw_test

import data.liftlint.rules.fit.plate_in_jaw.finding

grades(fit) := got if got := {f.grade | some f in finding} with input as {"fits": [fit]}

plate(what, spaced, plate, jaw, filled) := {
	"key": "fit/1",
	"what": what,
	"spaced": spaced,
	"needs_m": plate,
	"room_m": jaw,
	"filled_ratio": filled,
}

test_breaks_too_thick if grades(plate("plate_in_jaw", false, 0.028, 0.027, 1.04)) == {"too_thick"}

test_breaks_loose if grades(plate("plate_in_jaw", false, 0.016, 0.027, 0.59)) == {"loose"}

test_meets_at_six_tenths if grades(plate("plate_in_jaw", false, 0.6, 1, 0.6)) == set()

test_meets_when_full if grades(plate("plate_in_jaw", false, 1, 1, 1)) == set()

test_spacers_keep_it if grades(plate("plate_in_jaw", true, 0.016, 0.027, 0.59)) == set()

test_breaks_too_thick_for_spacers_too if grades(plate("plate_in_jaw", true, 0.028, 0.027, 1.04)) == {"too_thick"}

test_a_ring_may_be_thin if grades(plate("ring_in_jaw", false, 0.01, 0.027, 0.37)) == set()

test_breaks_in_a_bow if grades(plate("plate_in_bow", false, 0.06, 0.05, 1.2)) == {"too_thick"}

test_unknown if grades({"key": "fit/1", "what": "plate_in_jaw", "spaced": false}) == set()

test_breaks_on_the_widths_alone if {
	grades({"key": "fit/1", "what": "plate_in_jaw", "spaced": false, "needs_m": 2, "room_m": 1}) == {"too_thick"}
}
