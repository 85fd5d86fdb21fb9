# METADATA
# title: Single choker that can slide
# description: >-
#   One choker alone holds a load by its grip. On bare steel or a wet surface that
#   is little, and a long load that tilts a little pulls along the choke. A second
#   leg, a double wrap against a stop, or a stop alone keeps it in its place.
# custom:
#   over: hitches
#   where:
#     kind: [choke]
#     legs_on_load: {at_most: 1}
#     held_against_sliding: [false]
#   params:
#     slippery: [wet_or_oily]
#     smooth: [dry_steel]
#     long_m: {default: 3.6576, at_least: 1, at_most: 12}
#     along_deg: {default: 60, at_least: 45, at_most: 75}
#   grades:
#     - name: along
#       severity: error
#       title: Choker pulled along its body
#       measured: lean_along_body_deg
#       limit: along_deg
#       message: "{sling} is the only leg and pulls along {round}, leaning {measured} from straight across it; over {limit} the choke hardly grips whatever the surface: put it under a stop or take a second leg, and say so"
#     - name: slippery
#       severity: error
#       title: Single choker on a slippery surface
#       message: "{sling} is the only leg, choked on {round}, whose surface is slippery ({surface}), and nothing that the plan names keeps it from sliding along it: put it under a stop or take a second leg, and say so"
#     - name: smooth
#       severity: warning
#       message: "{sling} is the only leg, choked on {round}, whose surface is smooth ({surface}), and the plan does not say what keeps it from sliding along it"
#     - name: long
#       severity: warning
#       measured: body_length_m
#       limit: long_m
#       message: "{sling} is the only leg, choked on {round}, which is {measured} long; over {limit} two legs hold it, or the plan says what keeps the choke from sliding"
#     - name: surface_not_given
#       severity: warning
#   message: "{sling} is the only leg, choked on {round}, and the plan says neither what its surface is nor what keeps the choke from sliding along it"
#   cite:
#     - {document: common practice, clause: "12 ft for the length", basis: practice}
package liftlint.rules.hitch.choker_can_slide

import data.params.hitch.choker_can_slide as p

finding contains {"key": hitch.key, "grade": "along"} if {
	some hitch in input.hitches
	hitch.lean_along_body_deg > p.along_deg
}

finding contains {"key": hitch.key, "grade": "slippery"} if {
	some hitch in input.hitches
	hitch.surface in p.slippery
}

finding contains {"key": hitch.key, "grade": "smooth"} if {
	some hitch in input.hitches
	hitch.surface in p.smooth
}

finding contains {"key": hitch.key, "grade": "long"} if {
	some hitch in input.hitches
	hitch.body_length_m > p.long_m
}

finding contains {"key": hitch.key, "grade": "surface_not_given"} if {
	some hitch in input.hitches
	hitch.surface == "not_given"
}
