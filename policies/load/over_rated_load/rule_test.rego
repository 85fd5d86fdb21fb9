package liftlint.rules.load.over_rated_load_test

import data.liftlint.rules.load.over_rated_load.finding

grades(part) := got if got := {f.grade | some f in finding} with input as {"parts": [part]}

part(ratio) := at_angle(ratio, 20000)

at_angle(ratio, rated) := used("shackle", "straight", ratio, rated)

used(kind, hitch, ratio, rated) := {
	"key": "part/K1",
	"kind": kind,
	"hitch": hitch,
	"used_ratio": ratio,
	"marked_load_n": 20000,
	"rated_load_n": rated,
}

test_breaks_over if grades(part(1.001)) == {"over", "near"}

test_breaks_over_pulled_aside if grades(at_angle(1.001, 14000)) == {"over_pulled_aside", "over_at_angle", "over", "near_at_angle", "near"}

test_breaks_over_at_an_angle if grades(used("eyebolt", "straight", 1.001, 14000)) == {"over_at_angle", "over", "near_at_angle", "near"}

test_breaks_at_rated_load_at_an_angle_as_near if grades(at_angle(1, 14000)) == {"near_at_angle", "near"}

test_breaks_near_at_an_angle if grades(at_angle(0.901, 19999)) == {"near_at_angle", "near"}

test_meets_at_nine_tenths_at_an_angle if grades(at_angle(0.9, 14000)) == set()

test_breaks_at_rated_load_as_near if grades(part(1)) == {"near"}

test_breaks_near if grades(part(0.901)) == {"near"}

test_meets_at_nine_tenths if grades(part(0.9)) == set()

test_meets_without_force if grades(part(0)) == set()

test_ratio_absent if grades({"key": "part/S1", "kind": "padeye", "hitch": "straight", "load_n": 9000}) == set()

test_breaks_choked if {
	grades(used("wire_rope_sling", "choke", 1.001, 17400)) == {"over_choked", "over_at_angle", "over", "near_in_hitch", "near_at_angle", "near"}
}

test_breaks_choked_with_nothing_taken if {
	grades(used("wire_rope_sling", "choke", 1.001, 20000)) == {"over_choked", "over", "near_in_hitch", "near"}
}

test_breaks_near_in_a_choke if grades(used("wire_rope_sling", "choke", 1, 20000)) == {"near_in_hitch", "near"}

test_breaks_in_a_basket if {
	grades(used("wire_rope_sling", "basket", 1.001, 10000)) == {"over_in_basket", "over_at_angle", "over", "near_in_hitch", "near_at_angle", "near"}
}

test_breaks_near_in_a_basket if grades(used("wire_rope_sling", "basket", 1, 10000)) == {"near_in_hitch", "near_at_angle", "near"}

test_breaks_over_a_sheave if {
	grades(used("wire_rope_sling", "over_sheave", 1.001, 20000)) == {"over_on_sheave", "over", "near_in_hitch", "near"}
}

test_breaks_near_over_a_sheave if grades(used("wire_rope_sling", "over_sheave", 1, 20000)) == {"near_in_hitch", "near"}

each_hitch(kind) := {g | some hitch in ["choke", "basket", "over_sheave"]; some g in grades(used(kind, hitch, 1.001, 20000))}

test_breaks_every_kind_of_sling_likewise if {
	every kind in {"wire_rope_sling", "grommet", "chain_sling", "web_sling", "round_sling", "mesh_sling"} {
		each_hitch(kind) == {
			"over_choked",
			"over_in_basket",
			"over_on_sheave",
			"over",
			"near_in_hitch",
			"near",
		}
	}
}

test_breaks_every_kind_near_in_a_choke if {
	every kind in {"wire_rope_sling", "grommet", "chain_sling", "web_sling", "round_sling", "mesh_sling"} {
		grades(used(kind, "choke", 1, 20000)) == {"near_in_hitch", "near"}
	}
}

test_breaks_doubled if grades(used("grommet", "straight", 1.001, 40000)) == {"over_doubled", "over", "near_in_hitch", "near"}

test_breaks_near_doubled if grades(used("grommet", "straight", 1, 40000)) == {"near_in_hitch", "near"}

test_breaks_grommet_that_is_not_doubled if grades(used("grommet", "straight", 1.001, 20000)) == {"over", "near"}

test_breaks_shackle_in_a_choke_as_any_part if grades(used("shackle", "choke", 1.001, 20000)) == {"over", "near"}

test_breaks_shackle_in_a_basket_as_any_part if grades(used("shackle", "basket", 1.001, 20000)) == {"over", "near"}

test_breaks_block_as_any_part if grades(used("sheave_block", "over_sheave", 1.001, 20000)) == {"over", "near"}

test_breaks_sling_of_other_kinds_as_any_part if grades(used("wire_rope_sling", "straight", 1.001, 40000)) == {"over", "near"}

test_meets_in_each_hitch if {
	count({g | some hitch in ["choke", "basket", "over_sheave"]; some g in grades(used("wire_rope_sling", hitch, 0.9, 10000))}) == 0
}

test_meets_doubled if grades(used("grommet", "straight", 0.9, 40000)) == set()
