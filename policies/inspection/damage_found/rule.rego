# METADATA
# title: Damage found at an inspection
# description: >-
#   What takes an item out of service stays until somebody has looked for it again
#   and not found it, whatever other inspections say.
# custom:
#   over: signs
#   where:
#     uses: {at_least: 1}
#     what: [thimble_loose, abraded, kink, crushed, birdcage, corrosion, heat_damage, splice_slipped, sleeve_cracked, cracked, latch, bent, pin_original, bent_link, cut, burned, stitching_broken, core_exposed, chemical, knotted, broken_weld, broken_wire, tag_legible]
#   params:
#     watched: [thimble_loose, abraded]
#   grades:
#     - name: removal
#       severity: error
#       message: "{named} was found on {id} on {date}: it is taken out of service"
#     - name: to_be_judged
#       severity: warning
#   message: "{named} was found on {id} on {date}: have a qualified person judge it before the lift"
#   waivable: false
#   cite:
#     - {document: 29 CFR 1910.184, clause: "(e), (f)(5), (i)(9)", basis: memory, profiles: [us]}
#     - {document: ASME B30.9, basis: memory, profiles: [us]}
#     - {document: "ASME B30.10, B30.26", basis: memory, profiles: [us]}
#     - {document: DGUV Grundsatz 305-002, basis: read, profiles: [eu]}
#     - {document: common practice, basis: practice}
package liftlint.rules.inspection.damage_found

import data.params.inspection.damage_found as p

finding contains {"key": sign.key, "grade": "removal"} if {
	some sign in input.signs
	sign.seen == true
	not sign.what in p.watched
}

finding contains {"key": sign.key, "grade": "to_be_judged"} if {
	some sign in input.signs
	sign.seen == true
	sign.what in p.watched
}
