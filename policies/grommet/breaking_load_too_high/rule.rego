# METADATA
# title: Breaking load of a grommet not believable
# description: >-
#   A grommet's body is rope laid round itself, and holds no more than the strongest
#   rope as thick. A breaking load beyond that was copied wrong from its certificate,
#   or is that of another grommet; its tag is then held against its body instead.
# custom:
#   over: gear
#   where:
#     uses: {at_least: 1}
#     breaking_load_given: [true]
#   measured: breaking_over_strongest_ratio
#   params:
#     error_ratio: {default: 1.25, at_least: 1, at_most: 1.25}
#     warning_ratio: {default: 1.05, at_least: 1, at_most: 1.25}
#   grades:
#     - name: far_over
#       severity: error
#       limit: error_ratio
#     - name: over
#       title: Breaking load of a grommet unusually high
#       severity: warning
#       limit: warning_ratio
#   message: "the breaking load of {id} is {measured} of what the strongest rope as thick as its body holds; at most {limit} is believable: read it, the number of parts that it is for and the diameter of the body off the certificate again"
#   waivable: false
#   cite:
#     - {document: EN 12385-4, clause: breaking force of the strongest rope by its diameter, basis: practice}
#     - {document: common practice, clause: "that a body laid of rope holds no more than rope as thick, and the limits", basis: practice}
package liftlint.rules.grommet.breaking_load_too_high

import data.params.grommet.breaking_load_too_high as p

finding contains {"key": item.key, "grade": "far_over"} if {
	some item in input.gear
	item.breaking_over_strongest_ratio > p.error_ratio
}

finding contains {"key": item.key, "grade": "over"} if {
	some item in input.gear
	item.breaking_over_strongest_ratio > p.warning_ratio
}
