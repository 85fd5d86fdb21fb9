# METADATA
# title: Leg that carries next to nothing
# description: >-
#   A leg with a small part of its share is about to go slack. The load then
#   hangs from the others, and may turn: a center of gravity a few centimeters
#   off is enough.
# custom:
#   severity: warning
#   over: legs
#   where: {slack: [false]}
#   measured: share_ratio
#   limit: least_ratio
#   params:
#     least_ratio: {default: 0.15, at_least: 0, at_most: 0.5}
#   message: "leg {id} carries {measured} of what the legs carry on average; under {limit} it is close to going slack, and the load to turning"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.tension.leg_nearly_slack

import data.params.tension.leg_nearly_slack as p

finding contains leg.key if {
	some leg in input.legs
	leg.share_ratio < p.least_ratio
}
