package liftlint.rules.tension.leg_nearly_slack_test

import data.liftlint.rules.tension.leg_nearly_slack.finding

legs(x) := {"legs": [{"key": "leg/hook/1", "slack": false, "share_ratio": x}]}

test_breaks if finding == {"leg/hook/1"} with input as legs(0.149)

test_meets if finding == set() with input as legs(0.15)

test_slack_is_another_rule if finding == set() with input as {"legs": [{"key": "leg/hook/1", "slack": true, "share_ratio": 0}]}
