# METADATA
# title: Thimble narrower than what it goes over
# description: >-
#   A thimble keeps the eye's shape and does not give. It goes over a hook or a
#   link that is no wider than the thimble is inside.
# custom:
#   severity: error
#   over: fits
#   where: {thimble: [true]}
#   measured: body_width_m
#   limit: eye_width_m
#   message: "{outer} is {measured} wide; the thimble in {inner} has {limit} inside"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.thimble_over_body

finding contains fit.key if {
	some fit in input.fits
	fit.body_width_m > fit.eye_width_m
}
