# METADATA
# title: Concrete not yet strong enough
# description: >-
#   An insert holds what the concrete round it holds. Until that has the strength
#   for which the insert's figure stands, the figure means nothing.
# custom:
#   severity: error
#   over: attachments
#   where:
#     kind: [insert]
#     legs: {at_least: 1}
#   measured: concrete_strength_pa
#   limit: concrete_strength_needed_pa
#   message: "the concrete round insert {id} has {measured}; the breaking load of the insert holds from {limit} on"
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.load.concrete_too_young

finding contains point.key if {
	some point in input.attachments
	point.concrete_strength_pa < point.concrete_strength_needed_pa
}
