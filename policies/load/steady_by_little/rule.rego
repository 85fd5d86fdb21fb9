# METADATA
# title: Little holds the load upright
# description: >-
#   A load that hangs from points in one line, with its center of gravity only
#   just below them, is steady on paper. A few centimeters that the center of
#   gravity lies higher than thought, and it turns over. How far it may rise is
#   found with everything that the load hangs from, beams and hooks included.
# custom:
#   over: loads
#   where:
#     hangs: [steady]
#   params:
#     error_m: {default: 0.001, at_least: 0, at_most: 1}
#     warning_m: {default: 0.05, at_least: 0, at_most: 1}
#   grades:
#     - name: neutral
#       title: Nothing holds the load upright
#       severity: error
#       measured: center_may_rise_m
#       limit: error_m
#       message: "nothing rights the load when it is turned: its center of gravity lies level with what it hangs from"
#     - name: little
#       severity: warning
#       measured: center_may_rise_m
#       limit: warning_m
#   message: "the load turns over once its center of gravity lies {measured} higher than the plan has it; under {limit} that is no more than such a height is known by"
#   waivable: false
#   cite:
#     - {document: statics of a body on a hook, clause: for what rights it, basis: practice}
#     - {document: common practice, clause: for the limits, basis: practice, grades: [little]}
package liftlint.rules.load.steady_by_little

import data.params.load.steady_by_little as p

finding contains {"key": load.key, "grade": "neutral"} if {
	some load in input.loads
	load.center_may_rise_m < p.error_m
}

finding contains {"key": load.key, "grade": "little"} if {
	some load in input.loads
	load.center_may_rise_m < p.warning_m
}
