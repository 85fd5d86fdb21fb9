# METADATA
# title: Eye spread too wide
# description: >-
#   A soft eye that is forced over a hook, link, bow or pin too wide for its
#   length opens at the crotch and works at its splice. A thimble keeps an
#   eye's shape, so thimbled eyes are not judged by this.
# custom:
#   over: fits
#   where:
#     what: [eye_over_hook, eye_over_link, eye_over_bow, eye_over_pin, eye_over_shackle, eye_over_fitting]
#     thimble: [false]
#   params:
#     error_ratio: {default: 0.5, at_least: 0.1, at_most: 0.5}
#     note_deg: {default: 30, at_least: 5, at_most: 60}
#   grades:
#     - name: too_wide
#       severity: error
#       measured: width_over_length_ratio
#       limit: error_ratio
#     - name: spread
#       title: Eye opened wide
#       severity: note
#       measured: eye_included_angle_deg
#       limit: note_deg
#       message: "{inner} opens to an included angle of {measured} over {outer}; up to {limit} is usual"
#   message: "the width of {outer} is {measured} of the length of {inner}; at most {limit} keeps the sides of the eye from opening at the crotch"
#   remedy: larger_eye
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.eye_over_body

import data.params.fit.eye_over_body as p

finding contains {"key": fit.key, "grade": "too_wide"} if {
	some fit in input.fits
	fit.width_over_length_ratio > p.error_ratio
}

finding contains {"key": fit.key, "grade": "spread"} if {
	some fit in input.fits
	fit.eye_included_angle_deg > p.note_deg
}
