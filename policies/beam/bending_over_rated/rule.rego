# METADATA
# title: Beam over its rated bending moment
# description: >-
#   A lifting beam carries by bending: the further the load's points are from those
#   it hangs from, the more. Its rated load holds for the points that its document
#   names.
# custom:
#   severity: error
#   over: beams
#   where:
#     bending_rated: [true]
#   measured: bending_over_rated_ratio
#   limit: most_ratio
#   params:
#     most_ratio: {default: 1, at_least: 0.1, at_most: 1}
#   message: "the bending moment in {id} is {bending_nm}, {measured} of what it is rated for; at most {limit} is allowed"
#   waivable: false
#   cite:
#     - {document: 29 CFR 1926.251, clause: "(a)(2), for the rated load", basis: memory, profiles: [us]}
#     - {document: statics of a beam on its points, basis: practice}
package liftlint.rules.beam.bending_over_rated

import data.params.beam.bending_over_rated as p

finding contains beam.key if {
	some beam in input.beams
	beam.bending_over_rated_ratio > p.most_ratio
}
