# METADATA
# title: Attachment used by no leg
# description: >-
#   A lifting point that the plan lists and no leg goes to is a leg forgotten,
#   or a point that is not meant for this lift and had better say so. A beam has
#   more holes than one lift needs.
# custom:
#   severity: error
#   over: attachments
#   where: {on_beam: [false]}
#   message: "no leg goes to attachment {id}: give it a leg, take it out of the plan, or say that it is left free: `spare: true`"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.route.attachment_unused

finding contains attachment.key if {
	some attachment in input.attachments
	attachment.legs == 0
	attachment.spare == false
}
