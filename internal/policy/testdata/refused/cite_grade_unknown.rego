# METADATA
# title: A title
# description: A description.
# custom:
#   grades:
#     - {name: low, severity: warning}
#     - {name: lower, severity: note, title: Another title}
#   over: legs
#   measured: angle_from_horizontal_deg
#   limit: minimum_deg
#   params: {minimum_deg: 30}
#   message: "leg {id} at {measured}, {limit}"
#   cite:
#     - {document: common practice, basis: practice}
#     - {document: a handbook, basis: memory, grades: [low, lowr]}
package liftlint.rules.angle.bad

import data.params.angle.bad as p

finding contains {"key": leg.key, "grade": "low"} if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < p.minimum_deg
}

# want 15:61: there is no grade "lowr": did you mean "low"?
