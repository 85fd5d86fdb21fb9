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

finding[leg.key] := 1 if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < p.minimum_deg
}

# want 16:1: finding[leg.key]: a rule holds finding and nothing else; write a helper's conditions out, or make its value a parameter
