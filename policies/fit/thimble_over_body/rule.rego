# METADATA
# title: Thimble narrower than what it goes over
# description: >-
#   A thimble keeps the eye's shape and does not give. It goes over a hook, a
#   link, a bow or a pin that is no wider than the thimble is inside.
# custom:
#   severity: error
#   over: fits
#   where:
#     what: [eye_over_hook, eye_over_link, eye_over_bow, eye_over_pin, eye_over_shackle, eye_over_fitting]
#     thimble: [true]
#   measured: body_width_m
#   limit: eye_width_m
#   message: "{outer} is {measured} wide; the thimble in {inner} is {limit} wide inside"
#   remedy: wider_thimble
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.thimble_over_body

finding contains fit.key if {
	some fit in input.fits
	fit.body_width_m > fit.eye_width_m
}
