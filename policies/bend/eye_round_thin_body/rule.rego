# METADATA
# title: Soft eye bent too sharply
# description: >-
#   A rope that is bent round something thinner than itself is kinked, whatever
#   it carries. Up to twice its own diameter the bend still marks a soft eye; a
#   thimble spreads it.
# custom:
#   over: fits
#   where:
#     what: [eye_over_hook, eye_over_link, eye_over_bow, eye_over_pin, eye_over_shackle, eye_over_fitting]
#     thimble: [false]
#   measured: bend_d
#   params:
#     least_d: {default: 1, at_least: 1, at_most: 4}
#     advised_d: {default: 2, at_least: 1, at_most: 10}
#   grades:
#     - name: thinner_than_rope
#       severity: error
#       limit: least_d
#     - name: thin
#       title: Soft eye bent round less than is advised
#       severity: note
#       limit: advised_d
#       message: "{inner} bends round {outer}, which is {measured} thick (d is the diameter of the rope); at least {limit} is advised for a soft eye"
#   message: "{inner} bends round {outer}, which is {measured} thick (d is the diameter of the rope); no eye is bent round less than {limit}"
#   remedy: thicker_body
#   cite:
#     - {document: marine lifting guideline, clause: for 1 d, basis: read, grades: [thinner_than_rope]}
#     - {document: EN 13414-1, edition: "2003", clause: "Table 4, note 1, for 2 d", basis: read, profiles: [eu], grades: [thin]}
#     - {document: common practice, clause: for 2 d, basis: practice, grades: [thin]}
package liftlint.rules.bend.eye_round_thin_body

import data.params.bend.eye_round_thin_body as p

finding contains {"key": fit.key, "grade": "thinner_than_rope"} if {
	some fit in input.fits
	fit.bend_d < p.least_d
}

finding contains {"key": fit.key, "grade": "thin"} if {
	some fit in input.fits
	fit.bend_d < p.advised_d
}
