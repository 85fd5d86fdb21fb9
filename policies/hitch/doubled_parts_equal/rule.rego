# METADATA
# title: Parts of a doubled sling taken as equal
# description: >-
#   A sling that is laid double does not share its load evenly among its parts:
#   friction in the bends keeps one side tighter. Guidelines for heavy lifts take
#   45 and 55 percent at each bend; a profile may say so with sling_parts.
# custom:
#   severity: warning
#   over: legs
#   message: "the sling of leg {id} is laid double and its parts are taken to carry alike; friction in the bends puts more into some of them"
#   cite:
#     - {document: marine lifting guideline, clause: for 45 to 55 at each bend, basis: read}
#     - {document: common practice, basis: practice}
package liftlint.rules.hitch.doubled_parts_equal

finding contains leg.key if {
	some leg in input.legs
	leg.doubled == true
	leg.parts_taken_equal == true
}
