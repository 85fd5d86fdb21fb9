package liftlint.rules.inspection.broken_wires_test

import data.liftlint.rules.inspection.broken_wires.finding

found(sign) := got if got := finding with input as {"signs": [sign]}

sign(what, rope, n) := {"key": "sign/S1", "uses": 1, "what": what, "rope": rope, "count": n}

lay := "broken_wires_in_one_lay"

graded(grade) := {{"key": "sign/S1", "grade": grade}}

test_breaks_lay if found(sign(lay, "single_part", 10)) == graded("in_lay")

test_meets_lay if found(sign(lay, "single_part", 9.9)) == set()

test_breaks_of_no_known_make if found(sign(lay, "none", 10)) == graded("in_lay")

test_breaks_strand if found(sign("broken_wires_in_one_strand_in_one_lay", "single_part", 5)) == graded("in_strand")

test_meets_strand if found(sign("broken_wires_in_one_strand_in_one_lay", "single_part", 4.9)) == set()

test_breaks_cable_laid if found(sign(lay, "cable_laid", 20)) == graded("in_cable_lay")

test_meets_cable_laid if found(sign(lay, "cable_laid", 19)) == set()

test_breaks_braid if found(sign(lay, "multi_part", 20)) == graded("in_braid")

test_meets_braid if found(sign(lay, "multi_part", 19)) == set()

test_breaks_large_braid if found(sign(lay, "multi_part_of_8_and_more", 40)) == graded("in_large_braid")

test_meets_large_braid if found(sign(lay, "multi_part_of_8_and_more", 39)) == set()

test_breaks_six_diameters if found(sign("broken_wires_in_6_d", "single_part", 10)) == graded("in_six_diameters")

test_meets_six_diameters if found(sign("broken_wires_in_6_d", "single_part", 9.9)) == set()

test_breaks_thirty_diameters if found(sign("broken_wires_in_30_d", "single_part", 14)) == graded("in_thirty_diameters")

test_meets_thirty_diameters if found(sign("broken_wires_in_30_d", "single_part", 13.9)) == set()

test_breaks_side_by_side if found(sign("broken_wires_adjacent", "single_part", 3)) == graded("side_by_side")

test_meets_side_by_side if found(sign("broken_wires_adjacent", "single_part", 2.9)) == set()

test_breaks_far_over if found(sign(lay, "single_part", 45)) == graded("in_lay")

test_other_lengths_of_cable if found(sign("broken_wires_in_6_d", "cable_laid", 45)) == graded("in_six_diameters")

test_other_lengths_of_braids if found(sign("broken_wires_in_6_d", "multi_part", 45)) == graded("in_six_diameters")

test_other_lengths_of_large_braids if found(sign("broken_wires_in_6_d", "multi_part_of_8_and_more", 45)) == graded("in_six_diameters")

test_at_a_fitting_is_another_rule if found(sign("broken_wires_at_fitting", "single_part", 40)) == set()

test_gear_that_is_not_used if found({"key": "sign/S1", "uses": 0, "what": lay, "rope": "single_part", "count": 40}) == set()
