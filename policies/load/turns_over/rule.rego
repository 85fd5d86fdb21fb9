# METADATA
# title: Load turns over
# description: >-
#   A load whose center of gravity lies above the points it hangs from can turn
#   over as it leaves the ground. From two points it always does, however high
#   the hook; from more it depends on the height of hook and center of gravity.
# custom:
#   over: loads
#   grades:
#     - name: points_below_center_of_gravity
#       severity: error
#       message: "{named} turns over: it hangs from one point or from points in one line, and its center of gravity lies above them; no hook height mends that"
#     - name: overturns
#       severity: error
#     - name: at_worst
#       title: Load can turn over
#       severity: error
#       message: "the load turns over or finds no rest with {worst_corner}"
#     - name: rocks
#       title: Load can rock
#       severity: {draft: warning, review: warning, prelift: error}
#       message: "{named} can rock: near the way it hangs nothing rights it until a slack leg comes taut, and it may settle to either side"
#   message: "{named} turns over: it does not stay as it is meant to hang"
#   remedy: higher_hook
#   lowerable: false
#   waivable: false
#   cite:
#     - {document: statics of a body on a hook, basis: practice}
package liftlint.rules.load.turns_over

finding contains {"key": load.key, "grade": "points_below_center_of_gravity"} if {
	some load in input.loads
	load.hangs == "points_below_center_of_gravity"
}

finding contains {"key": load.key, "grade": "overturns"} if {
	some load in input.loads
	load.hangs == "overturns"
}

finding contains {"key": load.key, "grade": "at_worst"} if {
	some load in input.loads
	load.hangs_at_worst in ["overturns", "points_below_center_of_gravity", "does_not_balance"]
}

finding contains {"key": load.key, "grade": "rocks"} if {
	some load in input.loads
	load.hangs == "rocks"
}
