package liftlint.rules.sling.temperature_beyond_rating_test

import data.liftlint.rules.sling.temperature_beyond_rating.finding

made(kind, mesh, fabric, core, sleeve, low, high) := got if {
	got := {f.grade | some f in finding} with input as {"gear": [{
		"key": "gear/S1",
		"kind": kind,
		"uses": 1,
		"mesh": mesh,
		"fabric": fabric,
		"grommet_core": core,
		"grommet_sleeve": sleeve,
		"temperature_given": true,
		"lowest_c": low,
		"highest_c": high,
	}]}
}

grades(kind, low, high) := made(kind, "none", "none", "none", "none", low, high)

meshed(kind, mesh, low, high) := made(kind, mesh, "none", "none", "none", low, high)

woven(kind, fabric, low, high) := made(kind, "none", fabric, "none", "none", low, high)

laid(core, sleeve, low, high) := made("grommet", "none", "none", core, sleeve, low, high)

test_breaks_hot_grommet if grades("grommet", 10, 205) == {"grommet_hot"}

test_breaks_grommet_as_hot_as_no_chain if grades("grommet", 10, 539) == {"grommet_hot"}

test_breaks_hot_chain if grades("chain_sling", 10, 539) == {"chain_hot"}

test_breaks_hot_webbing if {
	every fabric in {"polyester", "nylon", "aramid"} { woven("web_sling", fabric, 10, 83) == {"fabric_hot"} }
}

test_breaks_hot_round_sling if woven("round_sling", "polyester", 10, 83) == {"fabric_hot"}

test_breaks_hot_polypropylene if woven("web_sling", "polypropylene", 10, 90.1) == {"polypropylene_hot"}

test_breaks_hot_hmpe if woven("round_sling", "hmpe", 10, 60.1) == {"hmpe_hot"}

test_breaks_yarns_not_given if woven("round_sling", "not_given", 10, 61) == {"hmpe_hot"}

test_breaks_webbing_not_given if woven("web_sling", "not_given", 10, 91) == {"polypropylene_hot", "fabric_hot"}

test_breaks_fiber_core_of_a_grommet if {
	every core in {"fiber", "not_given"} { laid(core, "none", 10, 83) == {"grommet_core"} }
}

test_breaks_aluminum_sleeve_of_a_grommet if {
	every sleeve in {"aluminum", "not_given"} { laid("none", sleeve, 10, 151) == {"grommet_sleeve"} }
}

test_meets_grommet_of_wire_and_steel if laid("iwrc", "steel", 10, 204) == set()

test_meets_core_at_its_limit if laid("fiber", "none", 10, 82) == set()

test_meets_sleeve_at_its_limit if laid("none", "aluminum", 10, 150) == set()

test_meets_hmpe if woven("round_sling", "hmpe", -40, 60) == set()

test_meets_polypropylene if woven("web_sling", "polypropylene", -40, 90) == set()

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

test_meets_webbing if woven("web_sling", "nylon", -40, 82) == set()

test_meets_webbing_not_given if woven("web_sling", "not_given", -40, 82) == set()

test_meets_round_sling if woven("round_sling", "polyester", -40, 82) == set()

test_meets_mesh if meshed("mesh_sling", "coated", -17, 93) == set()

test_meets_mesh_that_may_be_coated if meshed("mesh_sling", "not_given", -17, 93) == set()

test_wire_rope_is_another_rule if grades("wire_rope_sling", -60, 900) == set()

test_gear_that_is_not_used if {
	finding == set() with input as {"gear": [{"key": "gear/W9", "kind": "web_sling", "fabric": "nylon", "mesh": "none", "grommet_core": "none", "grommet_sleeve": "none", "uses": 0, "temperature_given": true, "lowest_c": 10, "highest_c": 120}]}
}
