# METADATA
# title: Right- and left-lay slings joined
# description: >-
#   Two ropes of opposite lay, end to end, turn each other open under load: both
#   unlay and lose strength. Slings that follow each other are of one lay.
# custom:
#   severity: error
#   over: legs
#   where:
#     slings: {at_least: 2}
#   message: "in leg {id} a right-lay and a left-lay sling follow each other: use slings of one lay"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.sling.lays_joined

finding contains leg.key if {
	some leg in input.legs
	leg.lays_joined == "unlike"
}
