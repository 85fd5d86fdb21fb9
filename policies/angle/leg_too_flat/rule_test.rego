package liftlint.rules.angle.leg_too_flat_test

import data.liftlint.rules.angle.leg_too_flat.finding

grades(leg) := got if got := {f.grade | some f in finding} with input as {"legs": [leg]}

leg(deg) := {"key": "leg/hook/1", "slack": false, "angle_from_horizontal_deg": deg}

test_breaks_under_30 if grades(leg(29.9)) == {"too_flat", "flat", "below_usual"}

test_breaks_at_30_as_flat if grades(leg(30)) == {"flat", "below_usual"}

test_breaks_under_45 if grades(leg(44.9)) == {"flat", "below_usual"}

test_breaks_at_45_as_below_usual if grades(leg(45)) == {"below_usual"}

test_breaks_under_60 if grades(leg(59.9)) == {"below_usual"}

test_meets_at_60 if grades(leg(60)) == set()

test_meets_plumb if grades(leg(90)) == set()

test_angle_absent if grades({"key": "leg/hook/1", "slack": false}) == set()

test_slack_leg_is_not_judged if grades({"key": "leg/hook/1", "slack": true, "angle_from_horizontal_deg": 10}) == set()

test_slack_unknown_is_not_judged if grades({"key": "leg/hook/1", "angle_from_horizontal_deg": 10}) == set()
