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
	some leg in input.legs
	leg.angle_from_horizontal_deg < p.minimum_deg
	leg.judged_by == "own_forse"
}

# want 19:2: "own_forse" is none of own_force, own_force_at_worst, legs_counted, bound: did you mean "own_force"?
