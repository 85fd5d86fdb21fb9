# METADATA
# title: Tag for another number of legs
# description: >-
#   The tag of a bridle names its legs, and its rated load holds for so many. A
#   tag of another number belongs to another bridle, or legs were added or taken
#   off since.
# custom:
#   severity: error
#   over: bridles
#   where:
#     legs_on_tag_given: [true]
#   message: "the tag of {id} names {legs_on_tag} legs, and the bridle has {legs}: find out which bridle it is"
#   waivable: false
#   cite:
#     - {document: 29 CFR 1926.251, clause: (c)(16), basis: read, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.bridle.legs_on_tag

finding contains bridle.key if {
	some bridle in input.bridles
	bridle.legs_on_tag != bridle.legs
}
