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
	walk(leg, [x, y])
	x == y
}

# want 19:7: leg is a whole record: use its fields
# want 19:13: x: nothing of that name is declared above
# want 20:2: x: nothing of that name is declared above
# want 20:7: y: nothing of that name is declared above
