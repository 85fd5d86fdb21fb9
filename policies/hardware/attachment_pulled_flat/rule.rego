# METADATA
# title: Attachment pulled flatter than it is rated for
# description: >-
#   A lifting point is drawn and rated for pulls within certain angles. A flatter
#   one bends what was made to be pulled.
# custom:
#   severity: error
#   over: attachments
#   where:
#     legs: {at_least: 1}
#     rated_to_horizontal_given: [true]
#   measured: pull_angle_from_horizontal_deg
#   limit: rated_to_angle_from_horizontal_deg
#   message: "{named} is pulled at {measured} from the horizontal of what it stands on; it is rated down to {limit}"
#   remedy: flatter_rating
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.hardware.attachment_pulled_flat

finding contains point.key if {
	some point in input.attachments
	point.pull_angle_from_horizontal_deg < point.rated_to_angle_from_horizontal_deg
}
