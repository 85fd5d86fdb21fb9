# METADATA
# title: Bare edge under a sling
# description: >-
#   Most slings that fail are cut or crushed on an edge. For wire rope an edge is
#   sharp whose radius is less than the diameter of the rope. Corner pieces or
#   half rounds between sling and edge keep it from being cut.
# custom:
#   severity: error
#   over: hitches
#   where:
#     on: [body_with_corners]
#     edges_protected: [false]
#   measured: body_over_rope_ratio
#   limit: sharp_ratio
#   params:
#     sharp_ratio: {default: 2, at_least: 2, at_most: 6}
#   message: "the bare edges of {round} bend {sling} over {measured} of the diameter of its rope (twice their radius); under {limit} an edge is sharp for it: put corner pieces between them"
#   waivable: false
#   cite:
#     - {document: insurers' glossary, clause: for the radius of a sharp edge, basis: read}
#     - {document: common practice, basis: practice}
package liftlint.rules.bend.edge_unprotected

import data.params.bend.edge_unprotected as p

finding contains hitch.key if {
	some hitch in input.hitches
	hitch.body_over_rope_ratio < p.sharp_ratio
}
