package liftlint.rules.route.attachment_unused_test

import data.liftlint.rules.route.attachment_unused.finding

found(attachment) := got if got := finding with input as {"attachments": [attachment]}

test_breaks_without_a_leg if found({"key": "attachment/D", "kind": "padeye", "legs": 0}) == {"attachment/D"}

test_meets_with_a_leg if found({"key": "attachment/A", "kind": "padeye", "legs": 1}) == set()
