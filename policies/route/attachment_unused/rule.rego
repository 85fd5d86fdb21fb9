# METADATA
# title: Attachment used by no leg
# description: >-
#   A lifting point that the plan lists and no leg goes to is a leg forgotten,
#   or a point that is not meant for this lift and had better say so.
# custom:
#   severity: error
#   over: attachments
#   message: "no leg goes to attachment {id}: give it a leg, or take it out of the plan"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.route.attachment_unused

finding contains attachment.key if {
	some attachment in input.attachments
	attachment.legs == 0
}
