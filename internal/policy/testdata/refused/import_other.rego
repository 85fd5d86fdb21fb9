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

import data.params.angle.other as p
import data.liftlint.lib.helpers

finding contains leg.key if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < p.minimum_deg
}

# want 14:1: import data.params.angle.other: a rule sees its own parameters, data.params.angle.bad, and the library, data.liftlint.lib, and nothing else
# want 15:1: import data.liftlint.lib.helpers: a rule sees its own parameters, data.params.angle.bad, and the library, data.liftlint.lib, and nothing else
