# METADATA
# title: Sling eye straight on a padeye
# description: >-
#   A closed eye does not go through the hole of a plate. A shackle or a hook has
#   to stand between, and it has a rating and a fit of its own to be checked.
# custom:
#   severity: error
#   over: legs
#   where:
#     ends_at: [padeye]
#   message: "leg {id} ends with a sling's eye at padeye {to}: put the shackle that joins them into the leg"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.route.eye_on_padeye

finding contains leg.key if {
	some leg in input.legs
	leg.ends_in == "wire_rope_sling"
}
