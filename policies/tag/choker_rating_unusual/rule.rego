# METADATA
# title: Choker rating not believable
# description: >-
#   In a choke a sling is rated for 70 to 80 percent of what it is rated for straight,
#   whether of rope, chain or fabric. More than that is misread, or belongs to
#   another hitch. Tables are rounded, so a little is let pass. Mesh is rated
#   otherwise, and not judged by this.
# custom:
#   over: gear
#   where:
#     kind: [wire_rope_sling, grommet, chain_sling, web_sling, round_sling]
#     uses: {at_least: 1}
#     tag.state: [legible]
#     tag_names_choker_rating: [true]
#   measured: choker_over_vertical_ratio
#   params:
#     error_ratio: {default: 1, at_least: 0.8, at_most: 1}
#     warning_ratio: {default: 0.82, at_least: 0.7, at_most: 0.9}
#     note_ratio: {default: 0.5, at_least: 0, at_most: 0.7}
#   grades:
#     - name: far_over
#       severity: error
#       limit: error_ratio
#       message: "the tag of {id} rates a choke at {measured} of a straight pull; it takes strength from every sling, and over {limit} is not possible: see that the tag is read right"
#     - name: over
#       title: Choker rating unusually high
#       severity: warning
#       limit: warning_ratio
#     - name: far_under
#       title: Choker rating unusually low
#       severity: note
#       limit: note_ratio
#       message: "the tag of {id} rates a choke at {measured} of a straight pull; 70 to 80 % are usual: either the choke is rated for too little or the straight pull for too much; see that both are read right"
#   message: "the tag of {id} rates a choke at {measured} of a straight pull; 70 to 80 % are usual, and at most {limit} is believable: see that the tag is read right"
#   place: tag
#   cite:
#     - {document: EN 13414-1, clause: for 80 percent, basis: memory, profiles: [eu]}
#     - {document: common practice, clause: for 70 to 80 percent, basis: practice}
package liftlint.rules.tag.choker_rating_unusual

import data.params.tag.choker_rating_unusual as p

finding contains {"key": item.key, "grade": "far_over"} if {
	some item in input.gear
	item.choker_over_vertical_ratio > p.error_ratio
}

finding contains {"key": item.key, "grade": "over"} if {
	some item in input.gear
	item.choker_over_vertical_ratio > p.warning_ratio
}

finding contains {"key": item.key, "grade": "far_under"} if {
	some item in input.gear
	item.choker_over_vertical_ratio < p.note_ratio
}
