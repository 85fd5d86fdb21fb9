package liftlint.rules.hitch.construction_for_bend_test

import data.liftlint.rules.hitch.construction_for_bend.finding

grades(kind, class, core, bend) := got if {
	got := {f.grade | some f in finding} with input as {"hitches": [{"key": "hitch/hook/1", "sling_kind": kind, "rope_class": class, "rope_core": core, "body_over_rope_ratio": bend}]}
}

test_breaks_stiff if {
	every class in {"6x7", "6x19", "8x19"} { grades("wire_rope_sling", class, "iwrc", 9.9) == {"stiff"} }
}

test_breaks_fiber_core if grades("grommet", "6x36", "fiber", 9.9) == {"fiber_core"}

test_breaks_both if grades("wire_rope_sling", "6x19", "fiber", 5) == {"stiff", "fiber_core"}

test_meets_at_the_limit if grades("wire_rope_sling", "6x19", "fiber", 10) == set()

test_meets_thin_wires if grades("wire_rope_sling", "6x36", "iwrc", 5) == set()

test_unknown if grades("wire_rope_sling", "not_given", "not_given", 5) == set()

test_chain_is_none if grades("chain_sling", "none", "none", 3) == set()
