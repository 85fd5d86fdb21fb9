package liftlint.rules.beam.proof_test_missing_test

import data.liftlint.rules.beam.proof_test_missing.finding

grades(kind, on_file, given) := got if {
	got := {f.grade | some f in finding} with input as {"beams": [{"key": "beam/SB1", "kind": kind, "on_file": on_file, "proof_test_given": given}]}
}

test_breaks if grades("spreader_beam", false, false) == {"beam"}

test_breaks_device if grades("lifting_device", false, false) == {"beam", "device"}

test_meets if grades("lifting_device", false, true) == set()

test_on_file_is_another_rule if grades("lifting_device", true, false) == set()
