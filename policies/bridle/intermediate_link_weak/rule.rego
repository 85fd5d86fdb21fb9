# METADATA
# title: Intermediate link too weak for its legs
# description: >-
#   An intermediate link carries two legs that pull at an angle to each other. In
#   the makers' standard for wire rope slings it is rated for at least 1.6 times
#   one leg.
# custom:
#   severity: error
#   over: bridles
#   where:
#     intermediate_links: {at_least: 1}
#   measured: intermediate_over_leg_ratio
#   limit: least_ratio
#   params:
#     least_ratio: {default: 1.6, at_least: 1, at_most: 2}
#   message: "intermediate links of {id}: {names}; the weakest is rated for {measured} of what one leg is rated for, and at least {limit} is asked for"
#   place: weak_intermediate_links
#   remedy: stronger_intermediate_link
#   waivable: false
#   cite:
#     - {document: EN 13414-1, clause: intermediate links, basis: memory}
package liftlint.rules.bridle.intermediate_link_weak

import data.params.bridle.intermediate_link_weak as p

finding contains {"key": bridle.key, "names": bridle.weak_intermediate_links.ids} if {
	some bridle in input.bridles
	bridle.intermediate_over_leg_ratio < p.least_ratio
}
