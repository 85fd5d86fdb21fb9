# METADATA
# title: Hook not plumb over the center of gravity
# description: >-
#   As a load leaves the ground its center of gravity goes plumb under the hook.
#   With the hook set beside it, on legs that would hold the load as it is meant
#   to hang, the load drags over the ground and swings by as much as the hook
#   stands off. Long legs let it swing far while it hardly tilts; where it tilts
#   beyond 5 degrees, load/tilt tells of the same offset.
# custom:
#   severity: warning
#   over: loads
#   where:
#     hangs_from: [one_hook]
#     hangs: [steady, rocks]
#     tilt_deg: {at_most: 5}
#   measured: plumb_offset_m
#   limit: offset_m
#   params:
#     offset_m: {default: 0.1, at_least: 0, at_most: 5}
#   message: "with the load as it is meant to hang, its center of gravity lies {measured} beside the hook, and the load swings by that much as it leaves the ground; up to {limit} is taken as plumb"
#   remedy: level_lengths
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.load.hook_not_plumb

import data.params.load.hook_not_plumb as p

finding contains load.key if {
	some load in input.loads
	load.plumb_offset_m > p.offset_m
}
