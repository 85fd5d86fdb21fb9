# METADATA
# title: A title
# description: A description.
# custom:
#   grades:
#     - {name: low, severity: error, message: "{names}"}
#     - {name: lower, severity: warning}
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

# want 18:18: the message lists {names}, and the element has none
