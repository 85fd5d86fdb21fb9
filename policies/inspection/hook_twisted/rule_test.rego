package liftlint.rules.inspection.hook_twisted_test

import data.liftlint.rules.inspection.hook_twisted.finding

found(sign) := got if got := finding with input as {"signs": [sign]}

twist(deg) := {"key": "sign/H1", "uses": 1, "what": "twist", "twist_out_of_plane_deg": deg}

graded(grade) := {{"key": "sign/H1", "grade": grade}}

test_breaks_removal if found(twist(1)) == graded("removal")

test_breaks_to_be_judged if found(twist(0.99)) == graded("to_be_judged")

test_breaks_just_seen if found(twist(0.5)) == graded("to_be_judged")

test_meets if found(twist(0.49)) == set()

test_throat_is_another_rule if found({"key": "sign/H1", "uses": 1, "what": "throat_now", "twist_out_of_plane_deg": 40}) == set()

test_gear_that_is_not_used if found({"key": "sign/H1", "uses": 0, "what": "twist", "twist_out_of_plane_deg": 40}) == set()
