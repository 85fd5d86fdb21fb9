# METADATA
# title: Legs of different slings
# description: >-
#   Legs of one lift share a load alike only if they stretch alike: a thicker
#   rope, or one with a steel core beside one with a fiber core, takes more than
#   its part wherever stiffness has a say. Slings that were picked from unlike
#   sets also have unlike ratings.
# custom:
#   severity: warning
#   over: lifts
#   where:
#     legs: {at_least: 2}
#   message: "{legs_unlike.how}: use a matched set, or see that each leg's share holds for it"
#   place: legs_unlike
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.sling.legs_unlike

finding contains lift.key if {
	some lift in input.lifts
	lift.legs_unlike.how != ""
}
