# METADATA
# title: Worn beyond what is allowed
# description: >-
#   Wear takes section and strength that no load gives back.
# custom:
#   over: signs
#   where:
#     uses: {at_least: 1}
#     what: [outer_wire_wear, wear]
#   params:
#     outer_wires_ratio: {default: 0.333, at_least: 0.05, at_most: 0.334}
#     section_ratio: {default: 0.1, at_least: 0.02, at_most: 0.1}
#   grades:
#     - {name: outer_wires, severity: error, measured: lost_ratio, limit: outer_wires_ratio}
#     - {name: section, severity: error, measured: lost_ratio, limit: section_ratio}
#   message: "{named} of {id} was {measured} on {date}: from {limit} on it is taken out of service"
#   waivable: false
#   cite:
#     - {document: 29 CFR 1910.184, clause: (f)(5), basis: read, profiles: [us], grades: [outer_wires]}
#     - {document: "ASME B30.10, B30.26", basis: memory, profiles: [us], grades: [section]}
#     - {document: EN 818-6, clause: mean diameter of chain links, basis: memory, profiles: [eu], grades: [section]}
#     - {document: common practice, basis: practice}
package liftlint.rules.inspection.worn

import data.params.inspection.worn as p

finding contains {"key": sign.key, "grade": "outer_wires"} if {
	some sign in input.signs
	sign.what == "outer_wire_wear"
	sign.lost_ratio >= p.outer_wires_ratio
}

finding contains {"key": sign.key, "grade": "section"} if {
	some sign in input.signs
	sign.what == "wear"
	sign.lost_ratio >= p.section_ratio
}
