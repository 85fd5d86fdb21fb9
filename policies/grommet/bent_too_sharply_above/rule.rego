# METADATA
# title: Grommet bent too sharply at its upper end
# description: >-
#   A grommet hangs by the bend of its body at either end. Round something under five
#   times its own thickness it carries less than it is rated for, which is taken off
#   its rated load; round something thinner than itself it kinks.
# custom:
#   severity: error
#   over: grommets
#   measured: upper_bend_d
#   limit: least_d
#   params:
#     least_d: {default: 1, at_least: 1, at_most: 5}
#   message: "{id} bends round {upper_on} at {measured} (d is the diameter of its body); no grommet is bent round less than {limit}"
#   cite:
#     - {document: marine lifting guideline, clause: for 1 d, basis: read}
#     - {document: common practice, basis: practice}
package liftlint.rules.grommet.bent_too_sharply_above

import data.params.grommet.bent_too_sharply_above as p

finding contains grommet.key if {
	some grommet in input.grommets
	grommet.upper_bend_d < p.least_d
}
