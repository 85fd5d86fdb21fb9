# METADATA
# title: Hook not as high as stated
# description: >-
#   How high the hook stands over the load follows from the gear. Where the plan
#   gives another height, one of the two is wrong, and with it the headroom or the
#   angles that were reckoned with.
# custom:
#   severity: error
#   over: hooks
#   where:
#     height_given: [true]
#   measured: height_off_m
#   limit: most_m
#   params:
#     most_m: {default: 0.1, at_least: 0, at_most: 2}
#   message: "hook {id} stands {height_above_datum_m} over the datum with this gear, {measured} off what the plan gives; up to {limit} is allowed"
#   cite:
#     - {document: statics of a body on a hook, basis: practice}
package liftlint.rules.route.hook_height_off

import data.params.route.hook_height_off as p

finding contains hook.key if {
	some hook in input.hooks
	hook.height_off_m > p.most_m
}
