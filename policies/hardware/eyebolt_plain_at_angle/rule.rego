# METADATA
# title: Plain eyebolt pulled at an angle
# description: >-
#   An eyebolt without a shoulder bends at the first thread as soon as the pull
#   leaves its axis.
# custom:
#   severity: error
#   over: attachments
#   where:
#     kind: [eyebolt]
#     legs: {at_least: 1}
#   measured: off_axis_deg
#   limit: in_line_deg
#   params:
#     in_line_deg: {default: 5, at_least: 1, at_most: 5}
#   message: "eyebolt {id} has no shoulder and is pulled {measured} off its axis; it is for pulls in line, up to {limit}"
#   remedy: bolt_for_angle
#   waivable: false
#   cite:
#     - {document: ASME B30.26, clause: plain eyebolts are for pulls in line, basis: memory, profiles: [us]}
#     - {document: common practice, clause: plain eyebolts are for pulls in line, basis: practice, profiles: [eu]}
#     - {document: common practice, clause: for 5 degrees, basis: practice}
package liftlint.rules.hardware.eyebolt_plain_at_angle

import data.params.hardware.eyebolt_plain_at_angle as p

finding contains point.key if {
	some point in input.attachments
	point.pattern == "plain"
	point.off_axis_deg > p.in_line_deg
}
