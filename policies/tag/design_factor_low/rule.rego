# METADATA
# title: Design factor too low
# description: >-
#   A sling is rated at a share of its strength: wire rope and mesh at a fifth, chain at
#   a fourth, webbing and round slings at a fifth or a seventh. A tag that rests on
#   less rates its sling for other work, or is wrong.
# custom:
#   over: gear
#   where:
#     kind: [wire_rope_sling, grommet, chain_sling, web_sling, round_sling, mesh_sling, bridle]
#     uses: {at_least: 1}
#     tag_names_design_factor: [true]
#   measured: tag.design_factor
#   params:
#     least: {default: 5, at_least: 3, at_most: 10}
#     least_chain: {default: 4, at_least: 3, at_most: 10}
#     least_fabric: {default: 5, at_least: 5, at_most: 10}
#   grades:
#     - name: fabric
#       severity: error
#       limit: least_fabric
#     - name: chain
#       severity: error
#       limit: least_chain
#     - name: rope
#       severity: error
#       limit: least
#   message: "the tag of {id} rests on a design factor of {measured}; at least {limit} is asked for"
#   place: tag
#   waivable: false
#   cite:
#     - {document: MIL-DTL-3903F, clause: note 1, basis: read, profiles: [us], grades: [rope]}
#     - {document: ASME B30.9, clause: "for 4 with chain, 5 with webbing and round slings", basis: memory, profiles: [us], grades: [chain, fabric]}
#     - {document: EN 13414-1, clause: Zp, basis: memory, profiles: [eu], grades: [rope]}
#     - {document: EN 818-4, clause: for 4, basis: memory, profiles: [eu], grades: [chain]}
#     - {document: "EN 1492-1, EN 1492-2", clause: for 7, basis: memory, profiles: [eu], grades: [fabric]}
#     - {document: common practice, clause: for these factors, basis: practice}
package liftlint.rules.tag.design_factor_low

import data.params.tag.design_factor_low as p

finding contains {"key": item.key, "grade": "fabric"} if {
	some item in input.gear
	item.kind in {"web_sling", "round_sling"}
	item.tag.design_factor < p.least_fabric
}

finding contains {"key": item.key, "grade": "chain"} if {
	some item in input.gear
	item.of_chain == true
	item.tag.design_factor < p.least_chain
}

finding contains {"key": item.key, "grade": "rope"} if {
	some item in input.gear
	item.kind in {"wire_rope_sling", "grommet", "mesh_sling"}
	item.tag.design_factor < p.least
}

finding contains {"key": item.key, "grade": "rope"} if {
	some item in input.gear
	item.kind == "bridle"
	item.of_chain == false
	item.tag.design_factor < p.least
}
