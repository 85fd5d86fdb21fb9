# METADATA
# title: A title
# description: A description.
# custom:
#   grades:
#     - {name: low, severity: error}
#     - {name: lower, severity: warning, limit: tension_n}
#   over: legs
#   measured: angle_from_horizontal_deg
#   limit: minimum_deg
#   params: {minimum_deg: 30}
#   message: "leg {id} at {measured}, {limit}"
#   cite: [{document: common practice, basis: practice}]
package liftlint.rules.angle.bad

import data.params.angle.bad as p

finding contains {"key": leg.key, "grade": "low"} if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < p.minimum_deg
}

# want 7:42: limit: tension_n and angle_from_horizontal_deg do not end in the same unit
