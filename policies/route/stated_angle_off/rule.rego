# METADATA
# title: Leg hangs otherwise than stated
# description: >-
#   The parts of a leg, added up bearing to bearing between the points that it
#   joins, give the angle at which it hangs. Where the plan states another one,
#   a length, a position or the statement is wrong.
# custom:
#   over: legs
#   where: {angle_stated: [true]}
#   measured: stated_angle_off_deg
#   limit: most_deg
#   params:
#     most_deg: {default: 3, at_least: 0.5, at_most: 10}
#   grades:
#     - name: flatter
#       severity: error
#       title: Leg flatter than stated
#     - name: steeper
#       severity: warning
#       title: Leg steeper than stated
#   message: "leg {id} is stated to hang at {stated_angle_from_horizontal_deg} from horizontal and hangs at {angle_from_horizontal_deg}: off by {measured}; up to {limit} is allowed"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.route.stated_angle_off

import data.params.route.stated_angle_off as p

finding contains {"key": leg.key, "grade": "flatter"} if {
	some leg in input.legs
	leg.stated_angle_off_deg > p.most_deg
	leg.angle_from_horizontal_deg < leg.stated_angle_from_horizontal_deg
}

finding contains {"key": leg.key, "grade": "steeper"} if {
	some leg in input.legs
	leg.stated_angle_off_deg > p.most_deg
}
