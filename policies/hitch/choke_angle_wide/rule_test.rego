package liftlint.rules.hitch.choke_angle_wide_test

import data.liftlint.rules.hitch.choke_angle_wide.finding

found(deg) := got if got := finding with input as {"hitches": [{"key": "hitch/hook/1", "kind": "choke", "choke_angle_deg": deg}]}

test_breaks_over_135 if found(135.1) == {"hitch/hook/1"}

test_meets_as_it_sets_itself if found(135) == set()

test_meets_tight if found(90) == set()

test_baskets_have_none if finding == set() with input as {"hitches": [{"key": "hitch/hook/1", "kind": "basket"}]}
