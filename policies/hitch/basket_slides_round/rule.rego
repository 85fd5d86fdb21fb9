# METADATA
# title: Basket that slides round its body
# description: >-
#   The two runs of a basket pull alike unless friction keeps the sling where it
#   lies. Where they have to pull more unlike than friction holds, the sling runs
#   round the body and the load turns or drops on one side.
# custom:
#   severity: error
#   over: hitches
#   where:
#     kind: [basket]
#     on: [round_body, body_with_corners]
#   measured: slips_ratio
#   limit: most_ratio
#   params:
#     most_ratio: {default: 1, at_least: 0.5, at_most: 1}
#   message: "one run of {sling} round {round} pulls {force_ratio} of the other, which is {measured} of what friction holds ({surface}); over {limit} the sling slides round it: let both runs pull alike, or choke it"
#   waivable: false
#   cite:
#     - {document: equation of belt and capstan, clause: for what friction holds, basis: practice}
#     - {document: common practice, clause: for the friction of each surface, basis: practice}
package liftlint.rules.hitch.basket_slides_round

import data.params.hitch.basket_slides_round as p

finding contains hitch.key if {
	some hitch in input.hitches
	hitch.slips_ratio > p.most_ratio
}
