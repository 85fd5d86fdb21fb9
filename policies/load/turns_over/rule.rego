# METADATA
# title: Load turns over
# description: >-
#   A load whose center of gravity lies above the points it hangs from can turn
#   over as it leaves the ground. From two points it always does, however high
#   the hook; from more it depends on the height of hook and center of gravity.
# custom:
#   over: loads
#   grades:
#     - name: two_legs_below_center_of_gravity
#       severity: error
#       message: "the load turns over: it hangs from two points with its center of gravity above their line, and no hook height mends that"
#     - name: overturns
#       severity: error
#   message: "the load turns over: it does not stay as it is meant to hang"
#   lowerable: false
#   waivable: false
#   cite:
#     - {document: statics of a body on a hook, basis: practice}
package liftlint.rules.load.turns_over

finding contains {"key": load.key, "grade": "two_legs_below_center_of_gravity"} if {
	some load in input.loads
	load.hangs == "two_legs_below_center_of_gravity"
}

finding contains {"key": load.key, "grade": "overturns"} if {
	some load in input.loads
	load.hangs == "overturns"
}
