package liftlint.rules.bend.fabric_on_thin_fitting_test

import data.liftlint.rules.bend.fabric_on_thin_fitting.finding

grades(pressure, body, thickness) := got if {
	got := {f.grade | some f in finding} with input as {"bearings": [{"key": "bearing/W1", "pressure_pa": pressure, "body_width_m": body, "thickness_m": thickness}]}
}

test_breaks_pressed if grades(48300001, 0.016, 0.007) == {"pressed"}

test_meets_at_the_limit if grades(48300000, 0.016, 0.007) == set()

test_breaks_thin if grades(20000000, 0.008, 0.0081) == {"thin"}

test_meets_as_thick if grades(20000000, 0.008, 0.008) == set()

test_unknown if finding == set() with input as {"bearings": [{"key": "bearing/W1"}]}
