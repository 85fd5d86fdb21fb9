# METADATA
# title: Release of the load not confirmed
# description: >-
#   An anchor left in, a pipe still joined, a skid frozen down: the crane pulls on
#   the ground until something gives. Somebody looks, and the plan says who.
# custom:
#   severity: {draft: note, review: warning, prelift: warning}
#   over: loads
#   message: "the plan does not say how it was made sure that nothing holds the load down: add `freed`"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.load.not_shown_free

finding contains load.key if {
	some load in input.loads
	load.freed == false
}
