# METADATA
# title: Hand-tucked slings in critical lifts
# description: >-
#   A tucked splice can work loose when the sling turns, and nobody sees it from
#   the ground. For critical lifts the standard asks for pressed or socketed ends.
# custom:
#   severity: error
#   over: ropes
#   when:
#     category: [critical]
#   message: "{id} has a hand-tucked eye, which is not used in critical lifts"
#   cite:
#     - {document: rigging standard, clause: "4.7", basis: company}
package liftlint.rules.sling.no_tucks_when_critical

finding contains rope.key if {
	some rope in input.ropes
	"hand_tucked" in rope.eye_kinds
}
