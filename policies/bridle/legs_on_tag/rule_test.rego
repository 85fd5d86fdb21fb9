package liftlint.rules.bridle.legs_on_tag_test

import data.liftlint.rules.bridle.legs_on_tag.finding

found(bridle) := got if got := finding with input as {"bridles": [bridle]}

test_breaks if found({"key": "bridle/B1", "legs": 4, "legs_on_tag_given": true, "legs_on_tag": 2}) == {"bridle/B1"}

test_meets if found({"key": "bridle/B1", "legs": 4, "legs_on_tag_given": true, "legs_on_tag": 4}) == set()

test_unknown if found({"key": "bridle/B1", "legs": 4, "legs_on_tag_given": true}) == set()
