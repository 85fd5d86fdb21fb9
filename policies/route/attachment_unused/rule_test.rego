package liftlint.rules.route.attachment_unused_test

import data.liftlint.rules.route.attachment_unused.finding

found(attachment) := got if got := finding with input as {"attachments": [attachment]}

test_breaks_without_a_leg if found({"key": "attachment/D", "on_beam": false, "legs": 0, "spare": false}) == {"attachment/D"}

test_meets_with_a_leg if found({"key": "attachment/A", "on_beam": false, "legs": 1, "spare": false}) == set()

test_a_hole_of_a_beam_may_stay_empty if found({"key": "attachment/SB1.C", "on_beam": true, "legs": 0, "spare": false}) == set()

test_meets_where_it_is_spare if found({"key": "attachment/D", "on_beam": false, "legs": 0, "spare": true}) == set()
