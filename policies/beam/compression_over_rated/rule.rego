# METADATA
# title: Beam over its rated compression
# description: >-
#   The legs that a spreader hangs from put it in compression, the more the flatter
#   these are. What it can bear before it buckles is no question of the load alone,
#   so its maker rates it.
# custom:
#   severity: error
#   over: beams
#   where:
#     compression_rated: [true]
#   measured: compression_over_rated_ratio
#   limit: most_ratio
#   params:
#     most_ratio: {default: 1, at_least: 0.1, at_most: 1}
#   message: "the compression in {id} is {compression_n}, {measured} of what it is rated for; at most {limit} is allowed: longer legs above it lower that"
#   waivable: false
#   cite:
#     - {document: 29 CFR 1926.251, clause: "(a)(2), for the rated load", basis: memory, profiles: [us]}
#     - {document: statics of a bar under two legs, basis: practice}
package liftlint.rules.beam.compression_over_rated

import data.params.beam.compression_over_rated as p

finding contains beam.key if {
	some beam in input.beams
	beam.compression_over_rated_ratio > p.most_ratio
}
