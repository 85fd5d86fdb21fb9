# METADATA
# title: Leg too flat
# description: >-
#   The flatter a leg hangs, the more it pulls for the same weight, and the
#   more compression it puts into the load. At 30 degrees from horizontal a leg carries
#   twice what it would carry plumb.
# custom:
#   over: legs
#   where: {slack: [false]}
#   measured: angle_from_horizontal_deg
#   params:
#     error_deg: {default: 30, at_least: 30, at_most: 90}
#     warning_deg: {default: 45, at_least: 0, at_most: 90}
#     note_deg: {default: 60, at_least: 0, at_most: 90}
#   grades:
#     - name: too_flat
#       severity: error
#       limit: error_deg
#     - name: flat
#       title: Leg rather flat
#       severity: warning
#       limit: warning_deg
#       message: "leg {flattest_named} hangs at {measured} from horizontal; under {limit} small errors of length or height change its pull much"
#     - name: below_usual
#       title: Leg flatter than is usual
#       severity: note
#       limit: note_deg
#       message: "leg {flattest_named} hangs at {measured} from horizontal; legs are usually kept at {limit} or steeper"
#   message: "leg {flattest_named} hangs at {measured} from horizontal; at least {limit} is asked for"
#   remedy: longer_leg
#   cite:
#     - {document: ASME B30.9, clause: for 30 degrees from horizontal, basis: memory, profiles: [us], grades: [too_flat]}
#     - {document: EN 13414-1, edition: "2003", clause: "Table 4, for 30 degrees from horizontal", basis: read, profiles: [eu], grades: [too_flat]}
#     - {document: common practice, clause: for 30 degrees from horizontal, basis: practice, grades: [too_flat]}
#     - {document: common practice, clause: for 45 and 60 degrees from horizontal, basis: practice, grades: [flat, below_usual]}
package liftlint.rules.angle.leg_too_flat

import data.params.angle.leg_too_flat as p

finding contains {"key": leg.key, "grade": "too_flat"} if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < p.error_deg
}

finding contains {"key": leg.key, "grade": "flat"} if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < p.warning_deg
}

finding contains {"key": leg.key, "grade": "below_usual"} if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < p.note_deg
}
