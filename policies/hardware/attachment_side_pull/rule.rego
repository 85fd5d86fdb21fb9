# METADATA
# title: Attachment pulled out of its plane
# description: >-
#   A plate or an eye is strong in its own plane and bends easily out of it. Where
#   nothing is said of side pull, it is taken to be rated for none but what
#   fabrication leaves.
# custom:
#   severity: error
#   over: attachments
#   where:
#     kind: [padeye, eyebolt]
#     legs: {at_least: 1}
#     rated_to_plane_given: [false]
#   measured: out_of_plane_deg
#   limit: most_deg
#   params:
#     most_deg: {default: 5, at_least: 1, at_most: 10}
#   message: "{named} is pulled {measured} out of its plane, and the plan gives no side pull that it is rated for; up to {limit} is allowed"
#   remedy: aligned_plate
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.hardware.attachment_side_pull

import data.params.hardware.attachment_side_pull as p

finding contains point.key if {
	some point in input.attachments
	point.out_of_plane_deg > p.most_deg
}
