# METADATA
# title: Rated load too high for any rope or chain as thick
# description: >-
#   Where the plan gives no grade, or no strength is known for such rope or chain, a
#   tag can still be held against the strongest that is as thick. A rating beyond
#   that belongs to a thicker sling.
# custom:
#   over: gear
#   where:
#     uses: {at_least: 1}
#     rated_against: [strongest_rope]
#   measured: rated_over_strongest_ratio
#   params:
#     error_ratio: {default: 1.1, at_least: 1, at_most: 1.25}
#     warning_ratio: {default: 1.03, at_least: 1, at_most: 1.1}
#   grades:
#     - name: far_over
#       severity: error
#       limit: error_ratio
#     - name: over
#       severity: warning
#       limit: warning_ratio
#   message: "the tag of {id} rates one leg at {measured} of what the strongest rope or chain as thick can be rated for; at most {limit} is believable: find out which sling or which tag it is"
#   place: tag
#   remedy: believable_tag
#   waivable: false
#   cite:
#     - {document: MIL-DTL-3903F, clause: "Table II, for what eyes leave of the strength", basis: read, profiles: [us]}
#     - {document: EN 13414-1, clause: rated load from breaking force, basis: memory, profiles: [eu]}
#     - {document: common practice, clause: "tables of rope strength, and the limits", basis: practice}
package liftlint.rules.tag.rating_over_strongest_rope

import data.params.tag.rating_over_strongest_rope as p

finding contains {"key": item.key, "grade": "far_over"} if {
	some item in input.gear
	item.rated_over_strongest_ratio > p.error_ratio
}

finding contains {"key": item.key, "grade": "over"} if {
	some item in input.gear
	item.rated_over_strongest_ratio > p.warning_ratio
}
