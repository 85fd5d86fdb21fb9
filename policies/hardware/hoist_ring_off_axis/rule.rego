# METADATA
# title: Hoist ring pulled too far off its axis
# description: >-
#   A hoist ring turns into the pull, and still bears on its bolt; each is rated to
#   an angle from that bolt's axis.
# custom:
#   severity: error
#   over: attachments
#   where:
#     kind: [hoist_ring]
#     legs: {at_least: 1}
#   measured: off_axis_deg
#   limit: rated_to_angle_from_axis_deg
#   message: "hoist ring {id} is pulled {measured} off its axis; it is rated to {limit}"
#   remedy: further_from_axis
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.hardware.hoist_ring_off_axis

finding contains point.key if {
	some point in input.attachments
	point.off_axis_deg > point.rated_to_angle_from_axis_deg
}
