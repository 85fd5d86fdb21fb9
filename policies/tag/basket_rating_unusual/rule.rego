# METADATA
# title: Basket rating not believable
# description: >-
#   A basket hangs by two parts of one sling, and both together are rated for no more
#   than twice one straight pull. A tag far over that is misread. Tables are rounded,
#   so a little is let pass.
# custom:
#   over: gear
#   where:
#     uses: {at_least: 1}
#     tag.state: [legible]
#     tag_names_basket_rating: [true]
#   measured: basket_over_vertical_ratio
#   params:
#     error_ratio: {default: 2.2, at_least: 2, at_most: 2.5}
#     warning_ratio: {default: 2.06, at_least: 2, at_most: 2.2}
#   grades:
#     - name: far_over
#       severity: error
#       limit: error_ratio
#     - name: over
#       severity: warning
#       limit: warning_ratio
#   message: "the tag of {id} rates a basket at {measured} of a straight pull, and its two parts can't carry more than twice that: see that the tag is read right"
#   place: tag
#   cite:
#     - {document: common practice, clause: "twice a straight pull by statics, and what rounding adds", basis: practice}
package liftlint.rules.tag.basket_rating_unusual

import data.params.tag.basket_rating_unusual as p

finding contains {"key": item.key, "grade": "far_over"} if {
	some item in input.gear
	item.basket_over_vertical_ratio > p.error_ratio
}

finding contains {"key": item.key, "grade": "over"} if {
	some item in input.gear
	item.basket_over_vertical_ratio > p.warning_ratio
}
