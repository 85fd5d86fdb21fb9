# METADATA
# title: Beam longer than it is rated for
# description: >-
#   The longer a spreader of the same section is, the sooner it buckles. Its rated
#   load holds up to a span, and one that is put together longer carries less.
# custom:
#   severity: error
#   over: beams
#   where:
#     span_rated_for_given: [true]
#   measured: span_over_rated_ratio
#   limit: most_ratio
#   params:
#     most_ratio: {default: 1.001, at_least: 0.5, at_most: 1.001}
#   message: "the outermost points of {id} are {span_m} apart, {measured} of the span that its rated load is for; at most {limit} is allowed"
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.beam.span_over_rated

import data.params.beam.span_over_rated as p

finding contains beam.key if {
	some beam in input.beams
	beam.span_over_rated_ratio > p.most_ratio
}
