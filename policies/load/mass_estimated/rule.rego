# METADATA
# title: Estimated mass with little to spare
# description: >-
#   A mass that was judged by eye can be far off, and nearly always the load
#   turns out the heavier. It will do while every part has much to spare; with
#   less, the load is weighed, or its mass calculated, before it is lifted.
# custom:
#   severity: error
#   over: loads
#   where: {mass_known_by: [estimated]}
#   measured: most_used_ratio
#   limit: estimated_ratio
#   params:
#     estimated_ratio: {default: 0.75, at_least: 0.1, at_most: 1}
#   message: "the load's mass is estimated, and {most_used_part} carries {measured} of its rated load; over {limit} the mass has to be known better"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.load.mass_estimated

import data.params.load.mass_estimated as p

finding contains load.key if {
	some load in input.loads
	load.most_used_ratio > p.estimated_ratio
}
