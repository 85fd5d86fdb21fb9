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

finding contains "leg/1" if {
	p.minimum_deg > 3
}

# want 16:1: finding goes over its records with: some x in input.legs
