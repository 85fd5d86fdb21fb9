# METADATA
# title: Turnbuckle or adjuster set outside its range
# description: >-
#   A turnbuckle that is screwed out too far holds by too few threads, and one
#   that the plan has shorter than it goes can't be set so. Of an adjuster of chain
#   or rope it is the same.
# custom:
#   severity: error
#   over: gear
#   where: {kind: [turnbuckle, adjuster]}
#   measured: outside_range_m
#   message: "{id} is set to {length_m}, which is {measured} outside what it can be set to"
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.route.adjuster_out_of_range

finding contains item.key if {
	some item in input.gear
	item.outside_range_m > 0
}
