# METADATA
# title: Thimble made for another rope
# description: >-
#   A thimble is made for one size of rope. In a larger one the rope lies loose
#   and chafes; a smaller one pinches it and lets it climb out of the groove.
# custom:
#   over: fits
#   where: {thimble_size_given: [true]}
#   measured: thimble_over_rope_ratio
#   params:
#     most_ratio: {default: 1.03, at_least: 1, at_most: 1.1}
#     least_ratio: {default: 0.97, at_least: 0.9, at_most: 1}
#   grades:
#     - name: too_large
#       title: Thimble too large for its rope
#       severity: error
#       limit: most_ratio
#     - name: too_small
#       title: Thimble too small for its rope
#       severity: error
#       limit: least_ratio
#       message: "the thimble in {inner} is made for a thinner rope, of {measured} of the {rope_diameter_m} here; under {limit} its groove pinches the rope"
#   message: "the thimble in {inner} is made for a thicker rope, of {measured} of the {rope_diameter_m} here; over {limit} the rope lies loose in its groove"
#   remedy: thimble_for_rope
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.thimble_size

import data.params.fit.thimble_size as p

finding contains {"key": fit.key, "grade": "too_large"} if {
	some fit in input.fits
	fit.thimble_over_rope_ratio > p.most_ratio
}

finding contains {"key": fit.key, "grade": "too_small"} if {
	some fit in input.fits
	fit.thimble_over_rope_ratio < p.least_ratio
}
