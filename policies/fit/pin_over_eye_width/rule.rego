# METADATA
# title: Eye narrower than what goes through it
# description: >-
#   A soft eye lies as wide as it was spliced. A pin or a hook that is wider than
#   that pries it open before it carries anything. A body over half as wide as
#   the eye is long is told by the rule on eyes spread too wide.
# custom:
#   severity: error
#   over: fits
#   where:
#     what: [eye_over_hook, eye_over_link, eye_over_bow, eye_over_pin, eye_over_shackle, eye_over_fitting]
#     thimble: [false]
#     eye_width_given: [true]
#     width_over_length_ratio: {at_most: 0.5}
#   measured: body_width_m
#   limit: eye_width_m
#   message: "{outer} is {measured} wide; {inner} is {limit} wide where nothing spreads it"
#   remedy: wider_eye
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.pin_over_eye_width

finding contains fit.key if {
	some fit in input.fits
	fit.body_width_m > fit.eye_width_m
}
