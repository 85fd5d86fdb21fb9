# METADATA
# title: Rated direction of a padeye not given
# description: >-
#   A plate is designed for pulls within a range of angles; the flatter the pull,
#   the more it bends the plate and what it stands on. Where a leg pulls low, the
#   drawing of the padeye has to say that its rated load holds for that.
# custom:
#   severity: {draft: note, review: warning, prelift: warning}
#   over: attachments
#   where:
#     kind: [padeye]
#     on_beam: [false]
#     legs: {at_least: 1}
#   measured: pull_angle_from_horizontal_deg
#   limit: least_deg
#   params:
#     least_deg: {default: 45, at_least: 30, at_most: 90}
#   message: "{named} is pulled at {measured} from the load's horizontal, and the plan does not say that its rated load holds there, as it has to under {limit}: give `rated_to_angle_from_horizontal`"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.hardware.rated_direction_not_given

import data.params.hardware.rated_direction_not_given as p

finding contains attachment.key if {
	some attachment in input.attachments
	attachment.rated_to_horizontal_given == false
	attachment.pull_angle_from_horizontal_deg < p.least_deg
}
