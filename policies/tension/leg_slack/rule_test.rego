package liftlint.rules.tension.leg_slack_test

import data.liftlint.rules.tension.leg_slack.finding

found(leg) := got if got := finding with input as {"legs": [leg]}

test_breaks_slack if found({"key": "leg/hook/1", "slack": true}) == {"leg/hook/1"}

test_meets_taut if found({"key": "leg/hook/1", "slack": false}) == set()

test_unknown if found({"key": "leg/hook/1"}) == set()
