# METADATA
# title: Ears do not go through the hole
# description: >-
#   A shackle whose bow is to lie in a plate or a ring is put there ear first. The ears
#   stand round the pin, so they are wider than it is, as a rule twice as wide: where the
#   hole is no wider than the pin no ear passes, and up to twice the pin hardly one does.
#   The pin goes through the hole instead, and the bow takes what hangs on it.
# custom:
#   over: fits
#   where: {what: [bow_in_hole]}
#   measured: pin_over_hole_ratio
#   params:
#     closed_ratio: {default: 1, at_least: 0.5, at_most: 1}
#     tight_ratio: {default: 0.5, at_least: 0.3, at_most: 1}
#   grades:
#     - name: closed
#       severity: error
#       limit: closed_ratio
#       message: "{inner} can't lie in {outer}: the pin that the ears stand round is {measured} of its width, and from {limit} on no ear passes; turn the shackle round, so that its pin goes through"
#     - name: tight
#       title: Ears hardly go through the hole
#       severity: warning
#       limit: tight_ratio
#   message: "{inner} is to lie in {outer}, of which the shackle's pin is {measured}; its ears are as a rule twice as wide as the pin, and over {limit} they do not pass: turn the shackle round, so that its pin goes through"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.ears_through_hole

import data.params.fit.ears_through_hole as p

finding contains {"key": fit.key, "grade": "closed"} if {
	some fit in input.fits
	fit.pin_over_hole_ratio >= p.closed_ratio
}

finding contains {"key": fit.key, "grade": "tight"} if {
	some fit in input.fits
	fit.pin_over_hole_ratio > p.tight_ratio
}
