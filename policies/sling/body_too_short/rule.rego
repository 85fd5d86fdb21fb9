# METADATA
# title: Too little plain rope between the splices
# description: >-
#   The body of a sling needs some plain rope: between splices or sleeves that
#   follow each other closely the strands can't settle under load, and the sling
#   is as stiff as a bar.
# custom:
#   over: ropes
#   measured: clear_rope_d
#   params:
#     least_d: {default: 10, at_least: 5, at_most: 40}
#     least_tucked_d: {default: 10, at_least: 5, at_most: 40}
#   grades:
#     - name: too_short
#       severity: error
#       limit: least_d
#     - name: too_short_tucked
#       severity: error
#       limit: least_tucked_d
#   message: "{id} has {measured} of plain rope between its splices or sleeves (d is the diameter of the rope); at least {limit} is asked for"
#   remedy: longer_body
#   cite:
#     - {document: 29 CFR 1910.184, clause: "(f)(2), for 10 d", basis: read, profiles: [us]}
#     - {document: 29 CFR 1926.251, clause: "(c)(13), for 10 d", basis: read, profiles: [us]}
#     - {document: EN 13414-1, clause: for 20 d between sleeves and 15 d between splices, basis: memory, profiles: [eu]}
#     - {document: common practice, clause: that some plain rope is needed, basis: practice}
package liftlint.rules.sling.body_too_short

import data.params.sling.body_too_short as p

finding contains {"key": rope.key, "grade": "too_short"} if {
	some rope in input.ropes
	rope.tucked_splices == false
	rope.clear_rope_d < p.least_d
}

finding contains {"key": rope.key, "grade": "too_short_tucked"} if {
	some rope in input.ropes
	rope.tucked_splices == true
	rope.clear_rope_d < p.least_tucked_d
}
