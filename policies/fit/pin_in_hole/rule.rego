# METADATA
# title: Pin and hole do not fit
# description: >-
#   The pin of a shackle goes through the hole freely and fills most of it. A
#   thin pin in a wide hole of a plate bears on a line, where both give way long
#   before their rated loads.
# custom:
#   over: fits
#   where: {what: [pin_in_hole, pin_in_ring, bow_in_hole]}
#   params:
#     least_ratio: {default: 0.75, at_least: 0.5, at_most: 0.95}
#   grades:
#     - name: too_thick
#       title: Pin too thick for its hole
#       severity: error
#       measured: needs_m
#       limit: room_m
#     - name: play
#       title: Pin with too much play
#       severity: warning
#       measured: filled_ratio
#       limit: least_ratio
#       message: "{inner} fills {measured} of {outer}; under {limit} it has so much play that it bears on a line"
#   message: "{inner} is {measured} thick; {outer} is {limit} wide"
#   remedy: wider_hole
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.pin_in_hole

import data.params.fit.pin_in_hole as p

finding contains {"key": fit.key, "grade": "too_thick"} if {
	some fit in input.fits
	fit.needs_m > fit.room_m
}

finding contains {"key": fit.key, "grade": "play"} if {
	some fit in input.fits
	fit.what == "pin_in_hole" # a ring is wide, and a bow bears round
	fit.filled_ratio < p.least_ratio
}
