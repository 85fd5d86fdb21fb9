# METADATA
# title: Load tilts
# description: >-
#   A load turns until its center of gravity is plumb under the hook. What
#   tilts far can shed loose parts, land on a corner and load its legs unevenly.
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
#     - name: some
#       severity: warning
#       limit: warning_deg
#   message: "the load hangs tilted by {measured} from how it is meant to hang; at most {limit} is taken as level enough"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.load.tilt

import data.params.load.tilt as p

finding contains {"key": load.key, "grade": "far"} if {
	some load in input.loads
	load.tilt_deg > p.error_deg
}

finding contains {"key": load.key, "grade": "some"} if {
	some load in input.loads
	load.tilt_deg > p.warning_deg
}
