package liftlint.rules.inspection.proof_test_missing_test

import data.liftlint.rules.inspection.proof_test_missing.finding

found(item) := got if got := finding with input as {"on_file": [item]}

beam(tested) := {"key": "on_file/SB1", "uses": 1, "kind": "spreader_beam", "proof_tested": tested}

tested(ratio) := {"key": "on_file/SB1", "uses": 1, "kind": "spreader_beam", "proof_tested": "yes", "proof_over_rated_ratio": ratio}

graded(grade) := {{"key": "on_file/SB1", "grade": grade}}

test_breaks_missing if found(beam("no")) == graded("missing")

test_breaks_load_not_given if found(beam("load_not_given")) == graded("load_not_given")

test_breaks_too_low if found(tested(1.249)) == graded("too_low")

test_meets if found(tested(1.25)) == set()

test_rating_unknown if found(beam("yes")) == set()

test_other_kinds if found({"key": "on_file/K1", "uses": 1, "kind": "shackle", "proof_tested": "no"}) == set()

test_gear_that_is_not_used if found({"key": "on_file/SB1", "uses": 0, "kind": "spreader_beam", "proof_tested": "no"}) == set()
