# METADATA
# title: Too many broken wires
# description: >-
#   Wires break one after the other, and faster the more are broken. How many may
#   be before the sling is taken out of service depends on how its body is made
#   and over which length they are counted.
# custom:
#   over: signs
#   where:
#     uses: {at_least: 1}
#     what: [broken_wires_in_one_lay, broken_wires_in_one_strand_in_one_lay, broken_wires_in_6_d, broken_wires_in_30_d, broken_wires_adjacent]
#   params:
#     lay: {default: 10, at_least: 1, at_most: 10}
#     strand: {default: 5, at_least: 1, at_most: 5}
#     cable_lay: {default: 20, at_least: 1, at_most: 20}
#     braid: {default: 20, at_least: 1, at_most: 20}
#     large_braid: {default: 40, at_least: 1, at_most: 40}
#     six_diameters: {default: 10, at_least: 1, at_most: 10}
#     thirty_diameters: {default: 14, at_least: 1, at_most: 14}
#     adjacent: {default: 3, at_least: 1, at_most: 3}
#   grades:
#     - {name: in_lay, severity: error, measured: count, limit: lay}
#     - {name: in_strand, severity: error, measured: count, limit: strand}
#     - {name: in_cable_lay, severity: error, measured: count, limit: cable_lay}
#     - {name: in_braid, severity: error, measured: count, limit: braid}
#     - {name: in_large_braid, severity: error, measured: count, limit: large_braid}
#     - {name: in_six_diameters, severity: error, measured: count, limit: six_diameters}
#     - {name: in_thirty_diameters, severity: error, measured: count, limit: thirty_diameters}
#     - {name: side_by_side, severity: error, measured: count, limit: adjacent}
#   message: "{id} had {measured} {named} on {date}: with {limit} and more it is taken out of service"
#   waivable: false
#   cite:
#     - {document: 29 CFR 1910.184, clause: (f)(5), basis: read, profiles: [us], grades: [in_lay, in_strand]}
#     - {document: ASME B30.9, clause: 9-2.9.5, basis: read, grades: [in_cable_lay, in_braid, in_large_braid]}
#     - {document: DGUV Grundsatz 305-002, basis: read, grades: [in_six_diameters, in_thirty_diameters, side_by_side]}
#     - {document: common practice, clause: a lay is about six diameters long, basis: practice, grades: [in_lay, in_six_diameters]}
#     - {document: common practice, basis: practice, grades: [in_strand]}
package liftlint.rules.inspection.broken_wires

import data.params.inspection.broken_wires as p

finding contains {"key": sign.key, "grade": "in_lay"} if {
	some sign in input.signs
	sign.what == "broken_wires_in_one_lay"
	sign.rope in ["single_part", "none"]
	sign.count >= p.lay
}

finding contains {"key": sign.key, "grade": "in_strand"} if {
	some sign in input.signs
	sign.what == "broken_wires_in_one_strand_in_one_lay"
	sign.count >= p.strand
}

finding contains {"key": sign.key, "grade": "in_cable_lay"} if {
	some sign in input.signs
	sign.what == "broken_wires_in_one_lay"
	sign.rope == "cable_laid"
	sign.count >= p.cable_lay
}

finding contains {"key": sign.key, "grade": "in_braid"} if {
	some sign in input.signs
	sign.what == "broken_wires_in_one_lay"
	sign.rope == "multi_part"
	sign.count >= p.braid
}

finding contains {"key": sign.key, "grade": "in_large_braid"} if {
	some sign in input.signs
	sign.what == "broken_wires_in_one_lay"
	sign.rope == "multi_part_of_8_and_more"
	sign.count >= p.large_braid
}

finding contains {"key": sign.key, "grade": "in_six_diameters"} if {
	some sign in input.signs
	sign.what == "broken_wires_in_6_d"
	sign.count >= p.six_diameters
}

finding contains {"key": sign.key, "grade": "in_thirty_diameters"} if {
	some sign in input.signs
	sign.what == "broken_wires_in_30_d"
	sign.count >= p.thirty_diameters
}

finding contains {"key": sign.key, "grade": "side_by_side"} if {
	some sign in input.signs
	sign.what == "broken_wires_adjacent"
	sign.count >= p.adjacent
}
