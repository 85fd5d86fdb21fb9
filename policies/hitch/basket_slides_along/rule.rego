# METADATA
# title: Basket that slides along its body
# description: >-
#   A run of a basket that leans along its body pulls the sling along it, and only
#   friction keeps it in its place. When one slides, the legs gather and the load
#   tips out. European rules want it held; practice in the United States leaves it
#   to who rigs it, with the figures at hand.
# custom:
#   over: hitches
#   where:
#     kind: [basket]
#     on: [round_body, body_with_corners]
#     held_against_sliding: [false]
#     load_tilts: [false]
#   measured: friction_needed_over_given_ratio
#   params:
#     most_ratio: {default: 1, at_least: 0.5, at_most: 1}
#   grades:
#     - name: wet
#       severity: error
#       limit: most_ratio
#       message: "{sling} leans {lean_along_body_deg} along {round}, which is wet or oily, and needs {measured} of the friction that gives; over {limit} it slides: hang it plumb or hold it by a stop, and say so"
#     - name: slides
#       severity: warning
#       limit: most_ratio
#   message: "{sling} leans {lean_along_body_deg} along {round} and needs {measured} of the friction that its surface gives ({surface}); over {limit} it slides: hang it plumb or hold it by a stop, and say so"
#   waivable: false
#   cite:
#     - {document: DGUV 109-017, basis: read, profiles: [eu]}
#     - {document: friction on a slope, clause: for the friction needed, basis: practice}
#     - {document: common practice, clause: for the friction of each surface, basis: practice}
package liftlint.rules.hitch.basket_slides_along

import data.params.hitch.basket_slides_along as p

finding contains {"key": hitch.key, "grade": "wet"} if {
	some hitch in input.hitches
	hitch.surface == "wet_or_oily"
	hitch.friction_needed_over_given_ratio > p.most_ratio
}

finding contains {"key": hitch.key, "grade": "slides"} if {
	some hitch in input.hitches
	hitch.surface in {"dry_steel", "wood", "not_given"}
	hitch.friction_needed_over_given_ratio > p.most_ratio
}
