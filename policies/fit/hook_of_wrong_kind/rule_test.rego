package liftlint.rules.fit.hook_of_wrong_kind_test

import data.liftlint.rules.fit.hook_of_wrong_kind.finding

grades(made_for, latch) := got if {
	got := {f.grade | some f in finding} with input as {"hook_uses": [{"key": "hook_use/H1", "of": "sling", "made_for": made_for, "latch": latch}]}
}

test_breaks_grab if grades("grab", "works") == {"grab"}

test_breaks_sorting if grades("sorting", "none") == {"open"}

test_breaks_j if grades("j", "none") == {"open"}

test_breaks_faulty if grades("j", "faulty") == {"open"}

test_breaks_foundry if grades("foundry", "none") == {"foundry"}

test_breaks_foundry_faulty if grades("foundry", "faulty") == {"foundry"}

test_meets_with_a_latch if grades("sorting", "works") == set()

test_meets_foundry_with_a_latch if grades("foundry", "works") == set()

test_meets_lifting if grades("lifting", "none") == set()

test_unknown if finding == set() with input as {"hook_uses": [{"key": "hook_use/H1", "of": "sling", "made_for": "j"}]}
