package liftlint.rules.load.over_rated_load_test

import data.liftlint.rules.load.over_rated_load.finding

grades(part) := got if got := {f.grade | some f in finding} with input as {"parts": [part]}

part(ratio) := {"key": "part/S1", "kind": "wire_rope_sling", "used_ratio": ratio}

test_breaks_over if grades(part(1.001)) == {"over", "near"}

test_breaks_at_rated_load_as_near if grades(part(1)) == {"near"}

test_breaks_near if grades(part(0.901)) == {"near"}

test_meets_at_nine_tenths if grades(part(0.9)) == set()

test_meets_without_force if grades(part(0)) == set()

test_ratio_absent if grades({"key": "part/S1", "kind": "padeye", "load_n": 9000}) == set()
