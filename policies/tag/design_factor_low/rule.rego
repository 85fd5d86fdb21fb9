# METADATA
# title: Design factor too low
# description: >-
#   Wire rope slings are rated at a fifth of their strength. A tag that rests
#   on less rates its sling for other work, or is wrong.
# custom:
#   severity: error
#   over: gear
#   where:
#     kind: [wire_rope_sling, bridle]
#     uses: {at_least: 1}
#     tag_names_design_factor: [true]
#   measured: tag.design_factor
#   limit: least
#   params:
#     least: {default: 5, at_least: 3, at_most: 10}
#   message: "the tag of {id} rests on a design factor of {measured}; at least {limit} is asked for"
#   place: tag
#   waivable: false
#   cite:
#     - {document: MIL-DTL-3903F, clause: note 1, basis: read, profiles: [us]}
#     - {document: EN 13414-1, clause: Zp, basis: memory, profiles: [eu]}
#     - {document: common practice, clause: for a factor of 5, basis: practice}
package liftlint.rules.tag.design_factor_low

import data.params.tag.design_factor_low as p

finding contains item.key if {
	some item in input.gear
	item.tag.design_factor < p.least
}
