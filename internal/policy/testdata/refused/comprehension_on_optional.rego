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
	count([1 | leg.length_m > 3]) == 0
}

# want 19:13: leg.length_m may be absent, which not or a comprehension would take for false: turn the comparison round (x == false for not x, x <= y for not x > y), or read the field outside as well
