# METADATA
# title: Intermediate link too weak for its legs
# description: >-
#   An intermediate link carries two legs that pull at an angle to each other. In
#   the makers' standard for wire rope slings it is rated for at least 1.6 times
#   one leg. What one leg is rated for follows from the tag of the whole, whose figure
#   is rounded: three in a hundred are left for that.
# custom:
#   severity: error
#   over: bridles
#   where:
#     intermediate_links: {at_least: 1}
#   measured: intermediate_over_leg_ratio
#   limit: least_ratio
#   params:
#     least_ratio: {default: 1.55, at_least: 1, at_most: 2}
#   message: "intermediate links of {id}: {names}; the weakest is rated for {measured} of the {one_leg_rated_n} that follows from the tag for one leg, and at least {limit} is asked for, which is 1.6 times less rounding"
#   place: weak_intermediate_links
#   remedy: stronger_intermediate_link
#   waivable: false
#   cite:
#     - {document: EN 13414-1, clause: "intermediate links, 1.6 times", basis: memory}
#     - {document: common practice, clause: "the margin for rounding, that of the makers' tables, up to 2.3 %", basis: practice}
package liftlint.rules.bridle.intermediate_link_weak

import data.params.bridle.intermediate_link_weak as p

finding contains {"key": bridle.key, "names": bridle.weak_intermediate_links.ids} if {
	some bridle in input.bridles
	bridle.intermediate_over_leg_ratio < p.least_ratio
}
