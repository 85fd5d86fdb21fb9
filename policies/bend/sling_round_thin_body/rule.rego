# METADATA
# title: Sling bent round less than its own diameter
# description: >-
#   Rope that is bent round something thinner than itself kinks, and its wires
#   cross and cut each other, whatever it carries. That holds for the body of a
#   sling as for its eyes.
# custom:
#   severity: error
#   over: hitches
#   where:
#     on: [round_body, point, sheave]
#   measured: body_over_rope_ratio
#   limit: least_ratio
#   params:
#     least_ratio: {default: 1, at_least: 1, at_most: 5}
#   message: "{sling} is bent round {round}, whose thickness is {measured} of the diameter of its rope; no sling is bent round less than {limit}"
#   cite:
#     - {document: marine lifting guideline, basis: read}
#     - {document: common practice, basis: practice}
package liftlint.rules.bend.sling_round_thin_body

import data.params.bend.sling_round_thin_body as p

finding contains hitch.key if {
	some hitch in input.hitches
	hitch.body_over_rope_ratio < p.least_ratio
}
