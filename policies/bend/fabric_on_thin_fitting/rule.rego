# METADATA
# title: Webbing or round sling on too thin a fitting
# description: >-
#   Yarn that bears on little steel is crushed and cut there, however strong the sling
#   and the fitting are by themselves. The pressure is the force over the thickness of
#   the hook, bow, pin or link times the width that the sling lies in. What is thinner
#   than the sling is thick bends it as no sling is bent, whatever it carries.
# custom:
#   over: bearings
#   params:
#     most_pa: {default: 48300000, at_least: 10000000, at_most: 48300000}
#   grades:
#     - name: pressed
#       severity: error
#       measured: pressure_pa
#       limit: most_pa
#     - name: thin
#       severity: warning
#       measured: body_width_m
#       limit: thickness_m
#       message: "{on}, on which {id} bears, is {measured} thick, thinner than the sling, which is {limit}: take a thicker fitting"
#   message: "{id} presses on {on} with {measured}; at most {limit} is allowed on webbing and round slings: take a fitting thicker than {body_width_m}, or a wider sling"
#   cite:
#     - {document: WSTDA-RS-1, clause: "for 7000 psi on round slings, here taken for webbing too", basis: memory, grades: [pressed]}
#     - {document: common practice, basis: practice}
package liftlint.rules.bend.fabric_on_thin_fitting

import data.params.bend.fabric_on_thin_fitting as p

finding contains {"key": bearing.key, "grade": "pressed"} if {
	some bearing in input.bearings
	bearing.pressure_pa > p.most_pa
}

finding contains {"key": bearing.key, "grade": "thin"} if {
	some bearing in input.bearings
	bearing.body_width_m < bearing.thickness_m
}
