# METADATA
# title: Bare edge under a sling
# description: >-
#   Most slings that fail are cut or crushed on an edge. For wire rope and chain an
#   edge is sharp whose radius is less than the diameter of the rope or the size of
#   the chain, for webbing and round slings one whose radius is less than three
#   times their thickness. Of mesh no source tells; six times its thickness is asked
#   for. Corner pieces or half rounds between sling and edge keep
#   it from being cut.
# custom:
#   over: hitches
#   where:
#     on: [body_with_corners]
#     edges_protected: [false]
#     sling_kind: [wire_rope_sling, grommet, chain_sling, web_sling, round_sling, mesh_sling]
#   measured: body_over_rope_ratio
#   params:
#     sharp_ratio: {default: 2, at_least: 2, at_most: 6}
#     sharp_fabric_ratio: {default: 6, at_least: 6, at_most: 20}
#     sharp_mesh_ratio: {default: 12, at_least: 12, at_most: 40}
#   grades:
#     - name: fabric
#       severity: error
#       limit: sharp_fabric_ratio
#       message: "the bare edges of {round}, {edge_radius_m} in radius, are sharp for {sling}, which is {sling_size_m} thick: twice the radius is {measured} of that, and under {limit} an edge cuts; put corner pieces between them"
#     - name: mesh
#       severity: error
#       limit: sharp_mesh_ratio
#       message: "the bare edges of {round}, {edge_radius_m} in radius, are sharp for {sling}, whose mesh is {sling_size_m} thick: twice the radius is {measured} of that, and under {limit} an edge bends its wires sharply; put corner pieces between them"
#     - name: chain
#       severity: error
#       limit: sharp_ratio
#       message: "the bare edges of {round}, {edge_radius_m} in radius, are sharp for {sling}, whose chain is of {sling_size_m}: twice the radius is {measured} of that, and under {limit} an edge cuts; put corner pieces between them"
#     - name: rope
#       severity: error
#       limit: sharp_ratio
#   message: "the bare edges of {round}, {edge_radius_m} in radius, are sharp for {sling}, whose rope is {sling_size_m} thick: twice the radius is {measured} of that, and under {limit} an edge cuts; put corner pieces between them"
#   remedy: rounder_edge
#   waivable: false
#   cite:
#     - {document: insurers' glossary, clause: for the radius of a sharp edge, basis: read, grades: [chain, rope]}
#     - {document: "AS 1353.2, AS 4497.2", clause: for the radius of a sharp edge, basis: read, grades: [fabric]}
#     - {document: common practice, basis: practice}
package liftlint.rules.bend.edge_unprotected

import data.params.bend.edge_unprotected as p

finding contains {"key": hitch.key, "grade": "fabric"} if {
	some hitch in input.hitches
	hitch.sling_kind in {"web_sling", "round_sling"}
	hitch.body_over_rope_ratio < p.sharp_fabric_ratio
}

finding contains {"key": hitch.key, "grade": "mesh"} if {
	some hitch in input.hitches
	hitch.sling_kind == "mesh_sling"
	hitch.body_over_rope_ratio < p.sharp_mesh_ratio
}

finding contains {"key": hitch.key, "grade": "chain"} if {
	some hitch in input.hitches
	hitch.sling_kind == "chain_sling"
	hitch.body_over_rope_ratio < p.sharp_ratio
}

finding contains {"key": hitch.key, "grade": "rope"} if {
	some hitch in input.hitches
	hitch.sling_kind in {"wire_rope_sling", "grommet"}
	hitch.body_over_rope_ratio < p.sharp_ratio
}
