# METADATA
# title: Chain not made for lifting
# description: >-
#   Chain for overhead lifting is of alloy steel that stretches long before it
#   parts, of grade 80 and up. Chain of grade 43 and 70, for binding loads down and
#   for pulling, looks alike and parts without a warning.
# custom:
#   over: gear
#   where:
#     kind: [chain_sling]
#     uses: {at_least: 1}
#   grades:
#     - name: not_for_lifting
#       severity: error
#     - name: not_given
#       title: Grade of a chain not given
#       severity: {draft: note, review: warning, prelift: error}
#       message: "the grade of the chain of {id} is not given; for lifting it has to be of grade 80 or higher: read it off the links or the tag"
#   message: "the chain of {id} is of grade {chain_grade}, which is not made for overhead lifting: take one of grade 80 or higher"
#   waivable: false
#   cite:
#     - {document: ASME B30.9, clause: "for alloy chain, grade 80 and higher", basis: memory, profiles: [us]}
#     - {document: EN 818-4, clause: for grade 8, basis: memory, profiles: [eu]}
#     - {document: common practice, basis: practice}
package liftlint.rules.sling.chain_grade

finding contains {"key": item.key, "grade": "not_for_lifting"} if {
	some item in input.gear
	item.chain_grade in {"43", "70"}
}

finding contains {"key": item.key, "grade": "not_given"} if {
	some item in input.gear
	item.chain_grade == "not_given"
}
