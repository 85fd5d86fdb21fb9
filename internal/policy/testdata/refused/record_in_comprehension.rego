# METADATA
# title: A title
# description: A description.
# custom:
#   severity: error
#   over: legs
#   measured: angle_from_horizontal_deg
#   limit: minimum_deg
#   params: {minimum_deg: 30}
#   message: "leg {id} at {measured}, {limit}"
#   cite: [{document: common practice, basis: practice}]
package liftlint.rules.angle.bad

import data.params.angle.bad as p

finding contains leg.key if {
	count([1 | some leg in input.legs; leg.slack == true]) > 0
}

# want 17:13: the record is declared in the body itself, not inside not or a comprehension
