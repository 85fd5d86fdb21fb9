package liftlint.rules.angle.flatter_than_tag_angle_test

import data.liftlint.rules.angle.flatter_than_tag_angle.finding

legs(angle, tag) := {"legs": [{"key": "leg/hook/1", "tag_names_angle": true, "angle_from_horizontal_deg": angle, "tag_angle_from_horizontal_deg": tag}]}

test_breaks if finding == {"leg/hook/1"} with input as legs(59.9, 60)

test_meets if finding == set() with input as legs(60, 60)

test_no_angle_on_the_tag if finding == set() with input as {"legs": [{"key": "leg/hook/1", "tag_names_angle": false, "angle_from_horizontal_deg": 31}]}
