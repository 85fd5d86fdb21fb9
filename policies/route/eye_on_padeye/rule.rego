# METADATA
# title: Sling straight on an attachment
# description: >-
#   A closed eye goes neither through the hole of a plate nor into the ring of an
#   eyebolt, the bight of a grommet takes no such bend, fabric is cut there, and the
#   last link of a chain fits nothing. A shackle or a hook has to stand between, and it
#   has a rating and a fit of its own to be checked. A basket and a choke end on no
#   plate.
# custom:
#   severity: error
#   over: legs
#   where: {hitch: [straight, over_sheave]}
#   message: "leg {id} ends with its {ends_in} straight on {ends_at} {to}: put the shackle or hook that joins them into the leg"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.route.eye_on_padeye

finding contains leg.key if {
	some leg in input.legs
	leg.ends_in in {"wire_rope_sling", "grommet", "chain_sling", "web_sling", "round_sling", "mesh_sling"}
}
