# METADATA
# title: Sling beyond the temperatures it is rated for
# description: >-
#   Webbing and round slings lose their strength in heat that a hand can hardly feel,
#   coated mesh its coating, chain and rope theirs when they are hot. What heat takes
#   from a rated load before that is taken off it. Beyond a limit, hot or cold, only
#   the maker can say what a sling may still carry. What a sling has lost for good once
#   it is cool again is for its inspection: alloy chain that was over 1000 F is taken
#   out of service, and what was over 600 F is rated anew (29 CFR 1910.184(e)(6), from
#   memory). Mesh of
#   which the plan does not say that it is bare counts as coated.
# custom:
#   over: gear
#   where:
#     kind: [grommet, chain_sling, web_sling, round_sling, mesh_sling]
#     uses: {at_least: 1}
#     temperature_given: [true]
#   params:
#     core_most_c: {default: 82, at_least: 40, at_most: 100}
#     sleeve_most_c: {default: 150, at_least: 40, at_most: 150}
#     rope_most_c: {default: 204, at_least: 40, at_most: 400}
#     chain_most_c: {default: 538, at_least: 40, at_most: 538}
#     fabric_most_c: {default: 82, at_least: 40, at_most: 100}
#     polypropylene_most_c: {default: 90, at_least: 40, at_most: 90}
#     hmpe_most_c: {default: 60, at_least: 40, at_most: 60}
#     mesh_most_c: {default: 93, at_least: 40, at_most: 93}
#     bare_most_c: {default: 288, at_least: 40, at_most: 288}
#     least_c: {default: -40, at_least: -40, at_most: 10}
#     mesh_least_c: {default: -17, at_least: -17, at_most: 10}
#     bare_least_c: {default: -28, at_least: -28, at_most: 10}
#   grades:
#     - name: grommet_core
#       title: Fiber core of a grommet too hot
#       severity: error
#       measured: highest_c
#       limit: core_most_c
#       message: "{id}, whose core is or may be of fiber, gets as hot as {measured}; with a fiber core {limit} is the most"
#     - name: grommet_sleeve
#       title: Aluminum sleeve of a grommet too hot
#       severity: error
#       measured: highest_c
#       limit: sleeve_most_c
#       message: "{id}, whose sleeve is or may be of aluminum, gets as hot as {measured}; with an aluminum sleeve {limit} is the most"
#     - name: grommet_hot
#       title: Grommet too hot
#       severity: error
#       measured: highest_c
#       limit: rope_most_c
#     - name: chain_hot
#       title: Chain too hot
#       severity: error
#       measured: highest_c
#       limit: chain_most_c
#     - name: hmpe_hot
#       title: Round sling of high-modulus polyethylene too hot
#       severity: error
#       measured: highest_c
#       limit: hmpe_most_c
#       message: "{id}, which is or may be of high-modulus polyethylene, gets as hot as {measured}; such yarns are used up to {limit}"
#     - name: polypropylene_hot
#       title: Webbing or round sling of polypropylene too hot
#       severity: error
#       measured: highest_c
#       limit: polypropylene_most_c
#       message: "{id}, which is or may be of polypropylene, gets as hot as {measured}; polypropylene is used up to {limit}: take chain or wire rope there"
#     - name: fabric_hot
#       title: Webbing or round sling too hot
#       severity: error
#       measured: highest_c
#       limit: fabric_most_c
#       message: "{id} gets as hot as {measured}; webbing and round slings are used up to {limit}: take chain or wire rope there"
#     - name: mesh_hot
#       title: Mesh sling too hot
#       severity: error
#       measured: highest_c
#       limit: mesh_most_c
#       message: "{id}, whose mesh is or may be coated, gets as hot as {measured}; with a coating {limit} is the most"
#     - name: bare_hot
#       title: Mesh sling too hot
#       severity: error
#       measured: highest_c
#       limit: bare_most_c
#     - name: mesh_cold
#       title: Mesh sling too cold
#       severity: error
#       measured: lowest_c
#       limit: mesh_least_c
#       message: "{id}, whose mesh is or may be coated, gets as cold as {measured}; with a coating {limit} is the least"
#     - name: bare_cold
#       title: Mesh sling too cold
#       severity: error
#       measured: lowest_c
#       limit: bare_least_c
#       message: "{id} gets as cold as {measured}; under {limit} its maker has to say whether it may be used"
#     - name: cold
#       title: Sling too cold
#       severity: error
#       measured: lowest_c
#       limit: least_c
#       message: "{id} gets as cold as {measured}; under {limit} its maker has to say whether it may be used"
#   message: "{id} gets as hot as {measured}; beyond {limit} its maker has to say what it may still carry"
#   waivable: false
#   cite:
#     - {document: 29 CFR 1910.184, clause: "(i), for 82 C with webbing of polyester and nylon", basis: memory, profiles: [us], grades: [fabric_hot]}
#     - {document: ASME B30.9, clause: "for 60 C with high-modulus polyethylene, 90 C with polypropylene, -40 C, and for fiber cores", basis: memory, profiles: [us], grades: [hmpe_hot, polypropylene_hot, cold, grommet_core]}
#     - {document: "EN 1492-1, EN 1492-2", clause: "for 100 C with polyester and polyamide, 80 C with polypropylene", basis: memory, profiles: [eu], grades: [fabric_hot, polypropylene_hot, cold]}
#     - {document: EN 13414-1, clause: "for 100 C with a fiber core, 150 C with aluminum sleeves", basis: memory, profiles: [eu], grades: [grommet_core, grommet_sleeve]}
#     - {document: 29 CFR 1910.184, clause: "(g), for mesh", basis: memory, profiles: [us], grades: [mesh_hot, bare_hot, mesh_cold, bare_cold]}
#     - {document: 29 CFR 1926.251, clause: "(c), for 204 C", basis: read, profiles: [us], grades: [grommet_hot]}
#     - {document: EN 13414-1, clause: "for 400 C and -40 C", basis: memory, profiles: [eu], grades: [grommet_hot, cold]}
#     - {document: common practice, clause: "tables of chain in heat, and that the maker is asked beyond these", basis: practice}
package liftlint.rules.sling.temperature_beyond_rating

import data.params.sling.temperature_beyond_rating as p

finding contains {"key": item.key, "grade": "grommet_core"} if {
	some item in input.gear
	item.grommet_core in {"fiber", "not_given"}
	item.highest_c > p.core_most_c
}

finding contains {"key": item.key, "grade": "grommet_sleeve"} if {
	some item in input.gear
	item.grommet_sleeve in {"aluminum", "not_given"}
	item.highest_c > p.sleeve_most_c
}

finding contains {"key": item.key, "grade": "grommet_hot"} if {
	some item in input.gear
	item.kind == "grommet"
	item.highest_c > p.rope_most_c
}

finding contains {"key": item.key, "grade": "chain_hot"} if {
	some item in input.gear
	item.kind == "chain_sling"
	item.highest_c > p.chain_most_c
}

finding contains {"key": item.key, "grade": "hmpe_hot"} if {
	some item in input.gear
	item.kind == "round_sling"
	item.fabric in {"hmpe", "not_given"}
	item.highest_c > p.hmpe_most_c
}

finding contains {"key": item.key, "grade": "polypropylene_hot"} if {
	some item in input.gear
	item.fabric in {"polypropylene", "not_given"}
	item.highest_c > p.polypropylene_most_c
}

finding contains {"key": item.key, "grade": "fabric_hot"} if {
	some item in input.gear
	item.fabric in {"polyester", "nylon", "aramid", "not_given"}
	item.highest_c > p.fabric_most_c
}

finding contains {"key": item.key, "grade": "mesh_hot"} if {
	some item in input.gear
	item.mesh in {"coated", "not_given"}
	item.highest_c > p.mesh_most_c
}

finding contains {"key": item.key, "grade": "bare_hot"} if {
	some item in input.gear
	item.mesh == "bare"
	item.highest_c > p.bare_most_c
}

finding contains {"key": item.key, "grade": "mesh_cold"} if {
	some item in input.gear
	item.mesh in {"coated", "not_given"}
	item.lowest_c < p.mesh_least_c
}

finding contains {"key": item.key, "grade": "bare_cold"} if {
	some item in input.gear
	item.mesh == "bare"
	item.lowest_c < p.bare_least_c
}

finding contains {"key": item.key, "grade": "cold"} if {
	some item in input.gear
	item.kind != "mesh_sling"
	item.lowest_c < p.least_c
}
