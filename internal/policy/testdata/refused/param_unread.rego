# METADATA
# title: t
# description: For this test.
# custom:
#   severity: error
#   over: legs
#   params: {least_deg: 40}
#   message: "leg {id}"
#   cite: [{document: company handbook, basis: company}]
package liftlint.rules.angle.bad

finding contains leg.key if {
	some leg in input.legs
	leg.tension_n > 1
}

# want 7:14: parameter least_deg is read by no condition, so that setting it would change nothing
