package liftlint.rules.sling.temperature_beyond_rating_test

import data.liftlint.rules.sling.temperature_beyond_rating.finding

grades(kind, low, high) := meshed(kind, "none", low, high)

meshed(kind, mesh, low, high) := got if {
	got := {f.grade | some f in finding} with input as {"gear": [{"key": "gear/S1", "kind": kind, "uses": 1, "mesh": mesh, "temperature_given": true, "lowest_c": low, "highest_c": high}]}
}

test_breaks_hot_grommet if grades("grommet", 10, 205) == {"grommet_hot"}

test_breaks_grommet_as_hot_as_no_chain if grades("grommet", 10, 539) == {"grommet_hot"}

test_breaks_hot_chain if grades("chain_sling", 10, 539) == {"chain_hot"}

test_breaks_hot_webbing if grades("web_sling", 10, 83) == {"fabric_hot"}

test_breaks_hot_round_sling if grades("round_sling", 10, 83) == {"fabric_hot"}

test_breaks_hot_mesh if meshed("mesh_sling", "coated", 10, 94) == {"mesh_hot"}

test_breaks_hot_mesh_that_may_be_coated if meshed("mesh_sling", "not_given", 10, 94) == {"mesh_hot"}

test_breaks_cold_mesh if meshed("mesh_sling", "coated", -18, 20) == {"mesh_cold"}

test_breaks_cold_mesh_that_may_be_coated if meshed("mesh_sling", "not_given", -18, 20) == {"mesh_cold"}

test_breaks_hot_bare_mesh if meshed("mesh_sling", "bare", 10, 289) == {"bare_hot"}

test_breaks_cold_bare_mesh if meshed("mesh_sling", "bare", -29, 20) == {"bare_cold"}

test_meets_bare_mesh if meshed("mesh_sling", "bare", -28, 288) == set()

test_breaks_cold_chain if grades("chain_sling", -41, 20) == {"cold"}

test_breaks_mesh_once if meshed("mesh_sling", "coated", -41, 20) == {"mesh_cold"}

test_meets_grommet if grades("grommet", -40, 204) == set()

test_meets_chain if grades("chain_sling", -40, 538) == set()

test_meets_webbing if grades("web_sling", -40, 82) == set()

test_meets_round_sling if grades("round_sling", -40, 82) == set()

test_meets_mesh if meshed("mesh_sling", "coated", -17, 93) == set()

test_meets_mesh_that_may_be_coated if meshed("mesh_sling", "not_given", -17, 93) == set()

test_wire_rope_is_another_rule if grades("wire_rope_sling", -60, 900) == set()

test_gear_that_is_not_used if {
	finding == set() with input as {"gear": [{"key": "gear/W9", "kind": "web_sling", "uses": 0, "temperature_given": true, "lowest_c": 10, "highest_c": 120}]}
}
