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

low(x) if x < 3

finding contains leg.key if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < p.minimum_deg
	low(leg.length_m)
}

# want 16:1: low: a rule holds finding and nothing else; write a helper's conditions out, or make its value a parameter
# want 21:2: low is not used in rules: arithmetic and anything longer is computed for the facts
