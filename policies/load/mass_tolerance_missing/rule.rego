# METADATA
# title: Tolerance of the mass missing
# description: >-
#   All forces are computed at the upper end of the mass's tolerance. Where a
#   plan gives none, they are computed at the bare figure, which scales,
#   nameplates and sums of volumes all miss by some percent.
# custom:
#   over: loads
#   grades:
#     - name: not_weighed
#       severity: warning
#     - name: weighed
#       title: Tolerance of the scale missing
#       severity: note
#       message: "the load is weighed, and the plan does not say how far the scale may be off: add its `mass_tolerance`"
#   message: "the load's mass is {mass_known_by}, and the plan does not say how far it may be off: without `mass_tolerance` all forces are computed at the bare figure"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.load.mass_tolerance_missing

finding contains {"key": load.key, "grade": "not_weighed"} if {
	some load in input.loads
	load.mass_tolerance_given == false
	load.mass_known_by in ["documented", "calculated", "estimated"]
}

finding contains {"key": load.key, "grade": "weighed"} if {
	some load in input.loads
	load.mass_tolerance_given == false
	load.mass_known_by == "weighed"
}
