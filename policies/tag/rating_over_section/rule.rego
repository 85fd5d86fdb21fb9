# METADATA
# title: Rated load too high for its section
# description: >-
#   A shackle, link, hook or part in line is rated for no more than steel of its
#   section can bear, and webbing, a round sling or mesh for no more than yarn or wire
#   of its width and thickness. The most is taken far over all that is made: a mean
#   stress of 1000 N/mm2 in steel under four times the rated load, 0.6 of that in a
#   pin, and 1000 N/mm2 in fabric under five times, 3000 in HMPE and aramid, 400 in
#   mesh. A rating over it has a decimal point or a unit misplaced, or a size misread.
# custom:
#   severity: error
#   over: gear
#   where:
#     uses: {at_least: 1}
#     section_held: [true]
#   measured: rated_over_section_ratio
#   limit: most_ratio
#   params:
#     most_ratio: {default: 1, at_least: 0.5, at_most: 1}
#   message: "{id} is rated for {measured} of the most that {section} could ever be rated for: read its rated load, its unit and its sizes again"
#   place: tag
#   waivable: false
#   cite:
#     - {document: common practice, clause: "statics of bars, pins and hooks; strengths far over those that are made", basis: practice}
#     - {document: ASME B30.26, clause: for design factors of 5 and 4, basis: memory}
#     - {document: ASME B30.9, clause: for a design factor of 5 of fabric and mesh, basis: memory}
package liftlint.rules.tag.rating_over_section

import data.params.tag.rating_over_section as p

finding contains item.key if {
	some item in input.gear
	item.rated_over_section_ratio > p.most_ratio
}
