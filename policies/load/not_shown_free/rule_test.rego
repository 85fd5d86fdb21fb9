package liftlint.rules.load.not_shown_free_test

import data.liftlint.rules.load.not_shown_free.finding

test_breaks if finding == {"load"} with input as {"loads": [{"key": "load", "freed": false}]}

test_meets if finding == set() with input as {"loads": [{"key": "load", "freed": true}]}
