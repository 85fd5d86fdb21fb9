package liftlint.rules.grommet.splice_at_bearing_test

import data.liftlint.rules.grommet.splice_at_bearing.finding

found(hitch, from) := got if {
	got := finding with input as {"grommets": [{"key": "grommet/G1", "hitch": hitch, "splice_given": true, "splice_from_bearing_d": from}]}
}

test_breaks if found("straight", 7.9) == {"grommet/G1"}

test_breaks_in_a_basket if found("basket", 7.9) == {"grommet/G1"}

test_meets_at_8_diameters if found("straight", 8) == set()

test_a_choke_has_no_one_bearing if found("choke", 1) == set()

test_unknown if finding == set() with input as {"grommets": [{"key": "grommet/G1", "hitch": "straight", "splice_given": true}]}
