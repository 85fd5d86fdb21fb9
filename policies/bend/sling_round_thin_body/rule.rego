# METADATA
# title: Sling bent round too thin a body
# description: >-
#   Rope that is bent round something thinner than itself kinks, and its wires
#   cross and cut each other, whatever it carries. That holds for the body of a
#   sling as for its eyes. For chain and fabric something thin is as bad as an edge:
#   round less than twice its size a chain bends its links, and round less than six
#   times their thickness webbing and round slings are cut.
# custom:
#   over: hitches
#   where:
#     on: [round_body, point, sheave]
#     sling_kind: [wire_rope_sling, grommet, chain_sling, web_sling, round_sling]
#   measured: body_over_rope_ratio
#   params:
#     least_ratio: {default: 1, at_least: 1, at_most: 5}
#     least_chain_ratio: {default: 2, at_least: 2, at_most: 6}
#     least_fabric_ratio: {default: 6, at_least: 6, at_most: 20}
#   grades:
#     - name: fabric
#       severity: error
#       limit: least_fabric_ratio
#       message: "{sling}, which is {sling_size_m} thick, is bent round {round} of {bent_over_m}, {measured} of that; webbing and round slings are bent round no less than {limit}"
#     - name: chain
#       severity: error
#       limit: least_chain_ratio
#       message: "{sling}, whose chain is of {sling_size_m}, is bent round {round} of {bent_over_m}, {measured} of that; no chain is bent round less than {limit}"
#     - name: rope
#       title: Sling bent round less than its own diameter
#       severity: error
#       limit: least_ratio
#   message: "{sling}, whose rope is {sling_size_m} thick, is bent round {round} of {bent_over_m}, {measured} of that; no sling is bent round less than {limit}"
#   remedy: thicker_round
#   cite:
#     - {document: marine lifting guideline, basis: read, grades: [rope]}
#     - {document: insurers' glossary, clause: "for the radius of an edge, which something as thin amounts to", basis: read, grades: [chain]}
#     - {document: "AS 1353.2, AS 4497.2", clause: "for the radius of an edge, which something as thin amounts to", basis: read, grades: [fabric]}
#     - {document: common practice, basis: practice}
package liftlint.rules.bend.sling_round_thin_body

import data.params.bend.sling_round_thin_body as p

finding contains {"key": hitch.key, "grade": "fabric"} if {
	some hitch in input.hitches
	hitch.sling_kind in {"web_sling", "round_sling"}
	hitch.body_over_rope_ratio < p.least_fabric_ratio
}

finding contains {"key": hitch.key, "grade": "chain"} if {
	some hitch in input.hitches
	hitch.sling_kind == "chain_sling"
	hitch.body_over_rope_ratio < p.least_chain_ratio
}

finding contains {"key": hitch.key, "grade": "rope"} if {
	some hitch in input.hitches
	hitch.sling_kind in {"wire_rope_sling", "grommet"}
	hitch.body_over_rope_ratio < p.least_ratio
}
