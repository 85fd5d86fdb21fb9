package liftlint.rules.tension.leg_slack_test

import data.liftlint.rules.tension.leg_slack.finding

grades(leg) := got if got := {f.grade | some f in finding} with input as {"legs": [leg]}

test_breaks_by_statics if grades({"key": "leg/hook/1", "split": "settled_by_statics", "slack": true}) == {"by_statics"}

test_breaks_by_stiffness if grades({"key": "leg/hook/1", "split": "settled_by_stiffness", "slack": true}) == {"by_stiffness"}

test_meets_taut_by_statics if grades({"key": "leg/hook/1", "split": "settled_by_statics", "slack": false}) == set()

test_meets_taut_by_stiffness if grades({"key": "leg/hook/1", "split": "settled_by_stiffness", "slack": false}) == set()

test_unknown if grades({"key": "leg/hook/1", "split": "settled_by_statics"}) == set()
