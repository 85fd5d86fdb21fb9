# METADATA
# title: t
# description: For this test.
# custom:
#   severity: error
#   over: legs
#   measured: tension_n
#   limit: most_n
#   params: {most_n: 40, other_n: 50}
#   message: "leg {id}"
#   cite: [{document: company handbook, basis: company}]
package liftlint.rules.angle.bad

import data.params.angle.bad as p

finding contains leg.key if {
	some leg in input.legs
	leg.tension_n > p.other_n
}

# want 9:14: parameter most_n is read by no condition, so that setting it would change nothing
