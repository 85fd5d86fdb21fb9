# METADATA
# title: Plate does not fit the jaw
# description: >-
#   The plate goes between the ears of the shackle and fills most of the jaw. In
#   a wide jaw it slides to one ear, which then carries more than its half;
#   spacers on the pin keep it in the middle.
# custom:
#   over: fits
#   where: {what: [plate_in_jaw, ring_in_jaw, plate_in_bow]}
#   params:
#     least_ratio: {default: 0.6, at_least: 0.3, at_most: 0.9}
#   grades:
#     - name: too_thick
#       title: Plate too thick for the jaw
#       severity: error
#       measured: needs_m
#       limit: room_m
#     - name: loose
#       title: Plate loose in the jaw
#       severity: warning
#       measured: filled_ratio
#       limit: least_ratio
#       message: "{inner} fills {measured} of {outer}; under {limit} it slides to one ear unless spacers keep it in the middle"
#   message: "{inner} is {measured} thick; {outer} is {limit} wide"
#   remedy: wider_jaw
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.plate_in_jaw

import data.params.fit.plate_in_jaw as p

finding contains {"key": fit.key, "grade": "too_thick"} if {
	some fit in input.fits
	fit.needs_m > fit.room_m
}

finding contains {"key": fit.key, "grade": "loose"} if {
	some fit in input.fits
	fit.what == "plate_in_jaw" # a ring swings to the middle, and so does a bow
	fit.spaced == false
	fit.filled_ratio < p.least_ratio
}
