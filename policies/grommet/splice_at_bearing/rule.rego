# METADATA
# title: Splice of a grommet at a bearing
# description: >-
#   Where a grommet is tucked, or its ends lie in a sleeve, it is stiff and holds less:
#   bent round a hook or a pin it opens there. The mark of it is kept in the straight
#   part, clear of the length that lies in the bend.
# custom:
#   severity: error
#   over: grommets
#   where:
#     splice_given: [true]
#     hitch: [straight, basket]
#   measured: splice_from_bearing_d
#   limit: least_d
#   params:
#     least_d: {default: 8, at_least: 5, at_most: 20}
#   message: "the splice of {id} lies {measured} from the middle of a bearing (d is the diameter of its body); at least {limit} keeps it in the straight part: turn the grommet on"
#   cite:
#     - {document: common practice, clause: "that it is kept clear; 8 d is the quarter round a bend of 5 d and as much as that again", basis: practice}
package liftlint.rules.grommet.splice_at_bearing

import data.params.grommet.splice_at_bearing as p

finding contains grommet.key if {
	some grommet in input.grommets
	grommet.splice_from_bearing_d < p.least_d
}
