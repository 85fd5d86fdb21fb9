# METADATA
# title: Faults seen on a sling
# description: >-
#   A kink, crushed or sprung strands, marks of heat, a knot or a mended place
#   have taken strength from the rope that no load gives back. The sling is taken
#   out of service.
# custom:
#   severity: error
#   over: ropes
#   where: {looked_over: [true]}
#   message: "{id} is out of service for what is seen on it: {names}"
#   lowerable: false
#   waivable: false
#   cite:
#     - {document: 29 CFR 1926.251, clause: (a)(6), basis: read, profiles: [us]}
#     - {document: 29 CFR 1910.184, clause: (f)(5), basis: read, profiles: [us]}
#     - {document: DGUV Grundsatz 305-002, basis: read, profiles: [eu]}
#     - {document: common practice, basis: practice}
package liftlint.rules.sling.faults_seen

finding contains {"key": rope.key, "names": rope.faults_seen} if {
	some rope in input.ropes
	count(rope.faults_seen) > 0
}
