package liftlint.rules.angle.flatter_than_tag_test

import data.liftlint.rules.angle.flatter_than_tag.finding

legs(angle, least) := {"legs": [{"key": "leg/hook/1", "rated_by_band": true, "angle_from_horizontal_deg": angle, "band_least_from_horizontal_deg": least}]}

test_breaks if finding == {"leg/hook/1"} with input as legs(44.9, 45)

test_meets if finding == set() with input as legs(45, 45)

test_not_by_band if finding == set() with input as {"legs": [{"key": "leg/hook/1", "rated_by_band": false, "angle_from_horizontal_deg": 31}]}
