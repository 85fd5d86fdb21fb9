# METADATA
# title: Legs of one bridle differ in length
# description: >-
#   Legs of a set are made alike to within one rope diameter. On a stiff load a
#   diagonal that is shorter by as little as that takes most of the weight.
# custom:
#   severity: warning
#   over: bridles
#   where:
#     legs: {at_least: 2}
#   measured: length_spread_d
#   limit: most_d
#   params:
#     most_d: {default: 1, at_least: 0, at_most: 10}
#   message: "the legs of {id} differ in length by {measured} (d is the diameter of their rope); matched legs differ by no more than {limit}"
#   cite:
#     - {document: common practice, clause: tolerances of matched slings, basis: practice}
package liftlint.rules.bridle.legs_unmatched

import data.params.bridle.legs_unmatched as p

finding contains bridle.key if {
	some bridle in input.bridles
	bridle.length_spread_d > p.most_d
}
