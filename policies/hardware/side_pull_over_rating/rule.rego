# METADATA
# title: Side pull over what the attachment is rated for
# description: >-
#   Where the document of a lifting point says how far out of its plane it may be
#   pulled, that is the limit.
# custom:
#   severity: error
#   over: attachments
#   where:
#     kind: [padeye, eyebolt]
#     legs: {at_least: 1}
#     rated_to_plane_given: [true]
#   measured: out_of_plane_deg
#   limit: rated_to_angle_from_plane_deg
#   message: "{named} is pulled {measured} out of its plane; it is rated to {limit}"
#   remedy: aligned_plate
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.hardware.side_pull_over_rating

finding contains point.key if {
	some point in input.attachments
	point.out_of_plane_deg > point.rated_to_angle_from_plane_deg
}
