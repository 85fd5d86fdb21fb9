package liftlint.rules.hardware.rated_direction_not_given_test

import data.liftlint.rules.hardware.rated_direction_not_given.finding

found(attachment) := got if got := finding with input as {"attachments": [attachment]}

padeye(kind, on_beam, legs, given, angle) := {
	"key": "attachment/A",
	"kind": kind,
	"on_beam": on_beam,
	"legs": legs,
	"rated_to_horizontal_given": given,
	"pull_angle_from_horizontal_deg": angle,
}

test_breaks_under_45 if found(padeye("padeye", false, 1, false, 44.9)) == {"attachment/A"}

test_meets_at_45 if found(padeye("padeye", false, 1, false, 45)) == set()

test_meets_where_it_is_given if found(padeye("padeye", false, 1, true, 30)) == set()

test_points_of_beams_are_not_meant if found(padeye("padeye", true, 1, false, 30)) == set()

test_without_a_leg if found(padeye("padeye", false, 0, false, 30)) == set()

test_eyebolts_are_other_rules if found(padeye("eyebolt", false, 1, false, 30)) == set()

test_pull_not_known if {
	found({"key": "attachment/A", "kind": "padeye", "on_beam": false, "legs": 1, "rated_to_horizontal_given": false}) == set()
}
