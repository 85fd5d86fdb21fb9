# METADATA
# title: Rated load not believable for the rope
# description: >-
#   What a straight leg is rated for follows from the strength of its rope or chain, what
#   its eyes leave of that, and a design factor of 5, of chain 4. A tag far over it belongs to
#   another sling or is misread. Tables are rounded, so a little is let pass.
# custom:
#   over: gear
#   where:
#     uses: {at_least: 1}
#     rated_against: [rope_like_it]
#   measured: rated_over_believable_ratio
#   params:
#     error_ratio: {default: 1.1, at_least: 1, at_most: 1.25}
#     warning_ratio: {default: 1.03, at_least: 1, at_most: 1.1}
#     note_ratio: {default: 0.5, at_least: 0, at_most: 1}
#   grades:
#     - name: grommet_far_over
#       title: Rated load of a grommet over what its breaking load allows
#       severity: error
#       limit: error_ratio
#       message: "the tag of {id} rates it at {measured} of what its breaking load allows; at most {limit} is believable: see whether that load is for one of its parts or for both"
#     - name: far_over
#       severity: error
#       limit: error_ratio
#     - name: over
#       severity: warning
#       limit: warning_ratio
#     - name: far_under
#       title: Rated load far below what the rope allows
#       severity: note
#       limit: note_ratio
#       message: "the tag of {id} rates one leg at {measured} of what such a sling is usually rated for: see whether sling and tag are read right"
#   message: "the tag of {id} rates one leg at {measured} of what such a sling can be rated for; at most {limit} is believable: find out which sling or which tag it is"
#   place: tag
#   remedy: believable_tag
#   cite:
#     - {document: MIL-DTL-3903F, clause: "Table II, for what eyes leave of the strength", basis: read, profiles: [us]}
#     - {document: EN 13414-1, clause: rated load from breaking force, basis: memory, profiles: [eu]}
#     - {document: common practice, clause: "tables of rope strength, and the limits", basis: practice}
package liftlint.rules.tag.rating_over_rope

import data.params.tag.rating_over_rope as p

finding contains {"key": item.key, "grade": "grommet_far_over"} if {
	some item in input.gear
	item.kind == "grommet"
	item.rated_over_believable_ratio > p.error_ratio
}

finding contains {"key": item.key, "grade": "far_over"} if {
	some item in input.gear
	item.rated_over_believable_ratio > p.error_ratio
}

finding contains {"key": item.key, "grade": "over"} if {
	some item in input.gear
	item.rated_over_believable_ratio > p.warning_ratio
}

finding contains {"key": item.key, "grade": "far_under"} if {
	some item in input.gear
	item.rated_over_believable_ratio < p.note_ratio
}
