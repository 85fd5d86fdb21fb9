package liftlint.rules.fit.link_over_hook_test

import data.liftlint.rules.fit.link_over_hook.finding

found(fit) := got if got := finding with input as {"fits": [fit]}

test_breaks if found({"key": "fit/1", "what": "link_over_hook", "needs_m": 0.141, "room_m": 0.14}) == {"fit/1"}

test_meets if found({"key": "fit/1", "what": "link_over_hook", "needs_m": 0.14, "room_m": 0.14}) == set()

test_width_unknown if found({"key": "fit/1", "what": "link_over_hook", "needs_m": 0.14}) == set()
