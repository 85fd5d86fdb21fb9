# METADATA
# title: Faults seen on a sling or fitting
# description: >-
#   A kink, crushed or sprung strands, a bent or worn link, a cut, a burn, a knot or a
#   mended place have taken strength from a sling that no load gives back; wear by a
#   tenth, a bent pin, an opened throat, a crack or a weld from a shackle, a link, a
#   hook, a part in line or a beam. It is taken out of service, whatever it is.
# custom:
#   severity: error
#   over: gear
#   where:
#     uses: {at_least: 1}
#     looked_over: [true]
#   message: "{id} is out of service for what is seen on it: {names}"
#   place: seen_on
#   lowerable: false
#   waivable: false
#   cite:
#     - {document: 29 CFR 1926.251, clause: (a)(6), basis: read, profiles: [us]}
#     - {document: 29 CFR 1910.184, clause: (f)(5), basis: read, profiles: [us]}
#     - {document: "ASME B30.10, B30.26", clause: for hooks and for shackles and links, basis: memory}
#     - {document: DGUV Grundsatz 305-002, basis: read, profiles: [eu]}
#     - {document: common practice, basis: practice}
package liftlint.rules.sling.faults_seen

finding contains {"key": item.key, "names": item.faults_seen} if {
	some item in input.gear
	count(item.faults_seen) > 0
}
