# METADATA
# title: Sign-off of the rigging loft
# description: >-
#   The loft looks through the gear of every critical lift before it leaves, and
#   says so in the plan.
# custom:
#   severity: {draft: note, review: error, prelift: error}
#   over: lifts
#   where:
#     category: [critical]
#   message: "the plan of this critical lift bears no sign-off of the rigging loft: add the label `loft_sign_off` with name and day"
#   cite:
#     - {document: rigging standard, clause: "2.5", basis: company}
package liftlint.rules.plan.loft_sign_off

import data.liftlint.lib

finding contains lift.key if {
	some lift in input.lifts
	not lib.has_label(lift.labels, "loft_sign_off")
}
