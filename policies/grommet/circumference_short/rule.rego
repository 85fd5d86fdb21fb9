# METADATA
# title: Grommet too short
# description: >-
#   A grommet needs length on both sides of its tuck and between its bearings: in one
#   that is too short for its thickness the tuck lies in a bend, and the strands can't
#   even out.
# custom:
#   severity: error
#   over: grommets
#   measured: circumference_d
#   limit: least_d
#   params:
#     least_d: {default: 96, at_least: 60, at_most: 200}
#   message: "{id} is {measured} once round (d is the diameter of its body); at least {limit} is asked for"
#   cite:
#     - {document: 29 CFR 1910.184, clause: (f)(2), basis: read, profiles: [us]}
#     - {document: 29 CFR 1926.251, clause: (c)(13), basis: read, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.grommet.circumference_short

import data.params.grommet.circumference_short as p

finding contains grommet.key if {
	some grommet in input.grommets
	grommet.circumference_d < p.least_d
}
