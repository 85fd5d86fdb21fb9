# METADATA
# title: t
# description: For this test.
# custom:
#   severity: error
#   over: legs
#   measured: length_m
#   message: "leg {id}"
#   cite: [{document: company handbook, basis: company}]
package liftlint.rules.angle.bad

finding contains leg.key if {
	some leg in input.legs
	leg.tension_n > 1
}

# want 7:5: measured: no condition reads length_m
