package liftlint.rules.load.mass_tolerance_missing_test

import data.liftlint.rules.load.mass_tolerance_missing.finding

grades(load) := got if got := {f.grade | some f in finding} with input as {"loads": [load]}

load(known_by, given) := {"key": "load", "mass_known_by": known_by, "mass_tolerance_given": given}

test_breaks_documented if grades(load("documented", false)) == {"not_weighed"}

test_breaks_calculated if grades(load("calculated", false)) == {"not_weighed"}

test_breaks_estimated if grades(load("estimated", false)) == {"not_weighed"}

test_breaks_weighed if grades(load("weighed", false)) == {"weighed"}

test_meets_calculated if grades(load("calculated", true)) == set()

test_meets_weighed if grades(load("weighed", true)) == set()

test_how_it_is_known_absent if grades({"key": "load", "mass_tolerance_given": false}) == set()
