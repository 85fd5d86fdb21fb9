# METADATA
# title: Load tilts
# description: >-
#   A load turns until its center of gravity is plumb under the hook. What
#   tilts far beyond how it is meant to hang can shed loose parts, land on a corner
#   and load its legs unevenly. Within the tolerances that the plan gives it has to
#   hang level enough too.
# custom:
#   over: loads
#   where: {hangs: [steady, rocks]}
#   measured: tilt_deg
#   params:
#     error_deg: {default: 10, at_least: 0, at_most: 45}
#     warning_deg: {default: 5, at_least: 0, at_most: 45}
#   grades:
#     - name: far
#       severity: error
#       limit: error_deg
#     - name: far_at_worst
#       title: Load can hang far out of level
#       severity: error
#       measured: tilt_at_worst_deg
#       limit: error_deg
#       message: "within the tolerances of the plan {worst_tilt_named} can hang tilted by {measured} from how it is meant to hang; at most {limit} is taken as level enough"
#     - name: some
#       title: Load a little out of level
#       severity: warning
#       limit: warning_deg
#     - name: some_at_worst
#       title: Load can hang out of level
#       severity: warning
#       measured: tilt_at_worst_deg
#       limit: warning_deg
#       message: "within the tolerances of the plan {worst_tilt_named} can hang tilted by {measured} from how it is meant to hang; at most {limit} is taken as level enough"
#   message: "{tilt_named} hangs tilted by {measured} from how it is meant to hang; at most {limit} is taken as level enough"
#   remedy: level_lengths
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.load.tilt

import data.params.load.tilt as p

finding contains {"key": load.key, "grade": "far"} if {
	some load in input.loads
	load.tilt_deg > p.error_deg
}

finding contains {"key": load.key, "grade": "far_at_worst"} if {
	some load in input.loads
	load.tilt_at_worst_deg > p.error_deg
}

finding contains {"key": load.key, "grade": "some"} if {
	some load in input.loads
	load.tilt_deg > p.warning_deg
}

finding contains {"key": load.key, "grade": "some_at_worst"} if {
	some load in input.loads
	load.tilt_at_worst_deg > p.warning_deg
}
