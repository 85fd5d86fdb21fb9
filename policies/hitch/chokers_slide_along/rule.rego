# METADATA
# title: Choker that slides along its body
# description: >-
#   A choker that leans along its body is pulled along it, and only friction holds
#   it: tan of the lean is what is needed. Dry steel gives about 0.15, wood 0.3,
#   anything wet or oily next to nothing. A second turn
#   doubles what friction holds, which on what is slippery is little still; a stop holds it, and a stop alone where the pull goes along the body. One of
#   two chokers that slides lets the load drop at its end.
# custom:
#   over: hitches
#   where:
#     kind: [choke]
#     legs_on_load: {at_least: 2}
#     held_against_sliding: [false]
#   measured: lean_along_body_deg
#   params:
#     along_deg: {default: 60, at_least: 45, at_most: 75}
#     wet_deg: {default: 2.9, at_least: 0, at_most: 10}
#     wet_turned_deg: {default: 5.7, at_least: 0, at_most: 10}
#     steel_deg: {default: 8.5, at_least: 0, at_most: 15}
#     wood_deg: {default: 16.7, at_least: 0, at_most: 30}
#   grades:
#     - name: along
#       severity: error
#       title: Choker pulled along its body
#       limit: along_deg
#       message: "{sling} pulls along {round}, leaning {measured} from straight across it; over {limit} the choke hardly grips whatever the surface: put it under a stop, and say so"
#     - name: wet
#       severity: error
#       limit: wet_deg
#       message: "{sling}, choked on {round}, which is wet or oily, leans {measured} along it; over {limit} it slides: hang it plumb, or hold it by a stop, and say so"
#     - name: wet_turned
#       severity: error
#       limit: wet_turned_deg
#       message: "{sling}, choked on {round}, which is wet or oily, leans {measured} along it; over {limit} a second turn holds it no more: hang it plumb, or hold it by a stop, and say so"
#     - name: on_steel
#       severity: warning
#       limit: steel_deg
#     - name: on_wood
#       severity: warning
#       limit: wood_deg
#   message: "{sling}, choked on {round}, leans {measured} along it; over {limit} its surface ({surface}) does not hold it: hang it plumb, give it a second turn, or hold it by a stop, and say so"
#   cite:
#     - {document: friction on a slope, clause: for the friction needed, basis: practice}
#     - {document: common practice, clause: "for the friction of each surface, and for a pull along the body", basis: practice}
package liftlint.rules.hitch.chokers_slide_along

import data.params.hitch.chokers_slide_along as p

finding contains {"key": hitch.key, "grade": "along"} if {
	some hitch in input.hitches
	hitch.lean_along_body_deg > p.along_deg
}

finding contains {"key": hitch.key, "grade": "wet"} if {
	some hitch in input.hitches
	hitch.surface == "wet_or_oily"
	hitch.turns < 2
	hitch.lean_along_body_deg > p.wet_deg
}

finding contains {"key": hitch.key, "grade": "wet_turned"} if {
	some hitch in input.hitches
	hitch.surface == "wet_or_oily"
	hitch.turns >= 2
	hitch.lean_along_body_deg > p.wet_turned_deg
}

finding contains {"key": hitch.key, "grade": "on_steel"} if {
	some hitch in input.hitches
	hitch.surface in {"dry_steel", "not_given"}
	hitch.turns < 2
	hitch.lean_along_body_deg > p.steel_deg
}

finding contains {"key": hitch.key, "grade": "on_wood"} if {
	some hitch in input.hitches
	hitch.surface == "wood"
	hitch.turns < 2
	hitch.lean_along_body_deg > p.wood_deg
}
