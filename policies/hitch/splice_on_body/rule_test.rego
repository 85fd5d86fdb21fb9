package liftlint.rules.hitch.splice_on_body_test

import data.liftlint.rules.hitch.splice_on_body.finding

found(lies) := got if got := finding with input as {"hitches": [{"key": "hitch", "kind": "basket", "splice_lies": lies}]}

test_breaks_on_the_body if found("on_body") == {"hitch"}

test_meets_free_of_it if found("free") == set()
