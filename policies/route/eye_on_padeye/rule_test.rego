package liftlint.rules.route.eye_on_padeye_test

import data.liftlint.rules.route.eye_on_padeye.finding

found(leg) := got if got := finding with input as {"legs": [leg]}

leg(hitch, kind, at) := {"key": "leg/hook/1", "hitch": hitch, "ends_in": kind, "ends_at": at}

test_breaks_on_a_padeye if found(leg("straight", "wire_rope_sling", "padeye")) == {"leg/hook/1"}

test_breaks_on_an_eyebolt if found(leg("straight", "wire_rope_sling", "eyebolt")) == {"leg/hook/1"}

test_breaks_on_a_hoist_ring if found(leg("straight", "wire_rope_sling", "hoist_ring")) == {"leg/hook/1"}

test_breaks_on_an_insert if found(leg("straight", "wire_rope_sling", "insert")) == {"leg/hook/1"}

test_breaks_on_a_beam if found(leg("straight", "wire_rope_sling", "beam")) == {"leg/hook/1"}

test_breaks_with_a_grommet if found(leg("straight", "grommet", "padeye")) == {"leg/hook/1"}

test_breaks_with_a_grommet_on_a_beam if found(leg("straight", "grommet", "beam")) == {"leg/hook/1"}

test_breaks_with_chain if found(leg("straight", "chain_sling", "padeye")) == {"leg/hook/1"}

test_breaks_with_webbing if found(leg("straight", "web_sling", "padeye")) == {"leg/hook/1"}

test_breaks_with_a_round_sling if found(leg("straight", "round_sling", "padeye")) == {"leg/hook/1"}

test_breaks_with_mesh if found(leg("straight", "mesh_sling", "padeye")) == {"leg/hook/1"}

test_breaks_over_a_sheave if found(leg("over_sheave", "wire_rope_sling", "padeye")) == {"leg/hook/1"}

test_meets_with_a_shackle if found(leg("straight", "shackle", "padeye")) == set()

test_meets_with_a_shackle_on_a_beam if found(leg("straight", "shackle", "beam")) == set()

test_meets_with_a_hook if found(leg("straight", "hook", "hoist_ring")) == set()

test_a_basket_ends_on_no_plate if found(leg("basket", "wire_rope_sling", "body")) == set()

test_a_basket_through_a_point_is_another_matter if found(leg("basket", "wire_rope_sling", "padeye")) == set()

test_a_choke_ends_on_no_plate if found(leg("choke", "wire_rope_sling", "body")) == set()
