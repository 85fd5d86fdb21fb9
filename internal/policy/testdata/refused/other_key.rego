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

finding contains leg.id if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < p.minimum_deg
}

# want 16:18: leg.id: an element of finding is the record's key, leg.key
