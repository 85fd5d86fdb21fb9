# METADATA
# title: Too little plain rope between the splices
# description: >-
#   The body of a sling needs some plain rope: between splices or sleeves that
#   follow each other closely the strands can't settle under load, and the sling
#   is as stiff as a bar. How much is asked for goes by the practice of the profile: of a
#   multi-part sling 40 diameters of the rope in it.
# custom:
#   over: ropes
#   measured: clear_rope_d
#   limit: least_clear_rope_d
#   grades:
#     - name: too_short_multi_part
#       title: Too little plain body between the splices
#       severity: error
#       message: "{id} has {measured} of plain body between its splices or sleeves (d is the diameter of the finished body); for the rope it is made of, at least {limit} is asked for"
#     - name: too_short
#       severity: error
#   message: "{id} has {measured} of plain rope between its splices or sleeves (d is the diameter of the rope); at least {limit} is asked for"
#   remedy: longer_body
#   cite:
#     - {document: 29 CFR 1910.184, clause: "(f)(2), for 10 d, and for 40 d of the rope in a braid", basis: read, profiles: [us]}
#     - {document: 29 CFR 1926.251, clause: "(c)(13), for 10 d, and for 40 d of the rope in a braid", basis: read, profiles: [us]}
#     - {document: EN 13414-1, clause: for 20 d between sleeves and 15 d between splices, basis: memory, profiles: [eu]}
#     - {document: common practice, clause: that some plain rope is needed, basis: practice}
package liftlint.rules.sling.body_too_short

finding contains {"key": rope.key, "grade": "too_short_multi_part"} if {
	some rope in input.ropes
	rope.body == "multi_part"
	rope.clear_rope_d < rope.least_clear_rope_d
}

finding contains {"key": rope.key, "grade": "too_short"} if {
	some rope in input.ropes
	rope.clear_rope_d < rope.least_clear_rope_d
}
