package liftlint.rules.inspection.repair_untested_test

import data.liftlint.rules.inspection.repair_untested.finding

found(item) := got if got := finding with input as {"on_file": [item]}

item(kind, tested) := used(kind, tested, 1)

used(kind, tested, uses) := {"key": "on_file/S1", "kind": kind, "uses": uses, "repair": {"proof_tested": tested}}

sling := {{"key": "on_file/S1", "grade": "sling"}}

other := {{"key": "on_file/S1", "grade": "other"}}

test_breaks_slings if {
	every kind in ["chain_sling", "web_sling", "mesh_sling", "bridle"] {
		found(item(kind, "no")) == sling
	}
}

test_breaks_others if {
	every kind in ["round_sling", "wire_rope_sling", "grommet", "spreader_beam", "lifting_beam", "lifting_device", "rocker_plate"] {
		found(item(kind, "no")) == other
	}
}

test_meets_tested if found(item("chain_sling", "yes")) == set()

test_meets_never_repaired if found(item("wire_rope_sling", "none")) == set()

test_meets_tested_beam if found(item("spreader_beam", "yes")) == set()

test_shackle if found(item("shackle", "no")) == set()

test_gear_that_is_not_used if found(used("chain_sling", "no", 0)) == set()
