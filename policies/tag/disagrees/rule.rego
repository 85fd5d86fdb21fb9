# METADATA
# title: Tag and sling differ
# description: >-
#   A tag that names another diameter or size, another grade, material, width or
#   length than the sling, or a leg of the bridle, has in the plan belongs to
#   another, and so does its rated load.
# custom:
#   former_ids: [tag/diameter_disagrees]
#   severity: error
#   over: gear
#   where:
#     kind: [wire_rope_sling, grommet, chain_sling, web_sling, round_sling, mesh_sling, bridle]
#     uses: {at_least: 1}
#     tag_names_make: [true]
#   message: "the tag of {id} names another {tag.disagrees_in} than is given of it: find out what it belongs to"
#   place: tag
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.tag.disagrees

finding contains item.key if {
	some item in input.gear
	item.tag.disagrees_in != "none"
}
