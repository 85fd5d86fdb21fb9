package liftlint.rules.plan.loft_sign_off_test

import data.liftlint.rules.plan.loft_sign_off.finding

lifts(category, labels) := {"lifts": [{"key": "lift", "category": category, "labels": labels}]}

test_breaks if finding == {"lift"} with input as lifts("critical", ["shift=night"])

test_meets if finding == set() with input as lifts("critical", ["loft_sign_off=loft, 2026-12-01"])

test_routine if finding == set() with input as lifts("routine", [])
