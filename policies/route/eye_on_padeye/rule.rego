# METADATA
# title: Sling eye straight on an attachment
# description: >-
#   A closed eye goes neither through the hole of a plate nor into the ring of an
#   eyebolt. A shackle or a hook has to stand between, and it has a rating and a
#   fit of its own to be checked.
# custom:
#   severity: error
#   over: legs
#   message: "leg {id} ends with a sling's eye straight on attachment {to}: put the shackle or hook that joins them into the leg"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.route.eye_on_padeye

finding contains leg.key if {
	some leg in input.legs
	leg.ends_in == "wire_rope_sling"
}
