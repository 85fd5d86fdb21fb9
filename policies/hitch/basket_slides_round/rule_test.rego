package liftlint.rules.hitch.basket_slides_round_test

import data.liftlint.rules.hitch.basket_slides_round.finding

found(hitch) := got if got := finding with input as {"hitches": [hitch]}

basket(on, ratio) := {"key": "hitch/hook/1", "kind": "basket", "on": on, "slips_ratio": ratio}

test_breaks_round_a_pipe if found(basket("round_body", 1.001)) == {"hitch/hook/1"}

test_breaks_round_a_bundle if found(basket("body_with_corners", 1.001)) == {"hitch/hook/1"}

test_meets_at_what_friction_holds if found(basket("round_body", 1)) == set()

test_unknown_surface if found({"key": "hitch/hook/1", "kind": "basket", "on": "round_body"}) == set()

test_through_a_point_it_slides_as_it_may if found(basket("point", 2)) == set()
