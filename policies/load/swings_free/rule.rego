# METADATA
# title: Load swings as it comes free under several hooks
# description: >-
#   Hooks that stand beside what they hold, all to one side, let the load swing
#   under them as it leaves the ground. Where they stand at another distance from
#   each other than the points they hold, they are pulled aside:
#   hook/pulled_aside tells of that. Where the load tilts beyond 5 degrees,
#   load/tilt does.
# custom:
#   severity: warning
#   over: loads
#   where:
#     hangs_from: [several_hooks]
#     hangs: [steady, rocks]
#     tilt_deg: {at_most: 5}
#     hooks_lean_from_plumb_deg: {at_most: 1}
#   measured: swing_m
#   limit: most_m
#   params:
#     most_m: {default: 0.1, at_least: 0, at_most: 5}
#   message: "the load swings {measured} to the side as it comes free under its hooks; up to {limit} is taken as coming free plumb: set the hooks plumb over what they hold"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.load.swings_free

import data.params.load.swings_free as p

finding contains load.key if {
	some load in input.loads
	load.swing_m > p.most_m
}
