# METADATA
# title: Slings joined eye to eye
# description: >-
#   Two closed eyes do not go into each other, and ropes looped through one
#   another cut and crush where they bear. A shackle joins them.
# custom:
#   severity: error
#   over: legs
#   message: "leg {id} puts one sling's eye straight into another's: write the shackle that joins them"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.route.eye_to_eye

finding contains leg.key if {
	some leg in input.legs
	leg.eye_to_eye > 0
}
