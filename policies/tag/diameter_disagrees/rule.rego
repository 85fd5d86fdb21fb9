# METADATA
# title: Tag and rope differ in diameter
# description: >-
#   A tag that names another diameter than the sling, or a leg of the bridle, has
#   belongs to another, and so does its rated load.
# custom:
#   severity: error
#   over: gear
#   where:
#     kind: [wire_rope_sling, bridle]
#     uses: {at_least: 1}
#     tag_names_diameter: [true]
#   message: "the tag of {id} names another diameter than its rope has in the plan: find out what it belongs to"
#   place: tag
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.tag.diameter_disagrees

finding contains item.key if {
	some item in input.gear
	item.tag.diameter == "differs"
}
