# METADATA
# title: Little holds the load upright
# description: >-
#   A load that hangs from points in one line, with its center of gravity only
#   just below them, is steady on paper. A few centimeters that the center of
#   gravity lies higher than thought, and it turns over. Beams and what else hangs
#   between hook and load have to be steady likewise.
# custom:
#   over: loads
#   where:
#     hangs: [steady]
#   measured: righting_m
#   params:
#     error_m: {default: 0.001, at_least: 0, at_most: 1}
#     rise_m: {default: 0.05, at_least: 0, at_most: 1}
#     warning_m: {default: 0.05, at_least: 0, at_most: 1}
#   grades:
#     - name: neutral
#       severity: error
#       limit: error_m
#       message: "nothing rights the load when it is turned: its center of gravity lies level with what it hangs from"
#     - name: rises_little
#       severity: warning
#       measured: center_may_rise_m
#       limit: rise_m
#       message: "the load turns over once its center of gravity lies {measured} higher than the plan has it; under {limit} that is no more than such a height is known by"
#     - name: little
#       severity: warning
#       limit: warning_m
#   message: "the load and its rigging hang no steadier than a pendulum {measured} long; under {limit} a small error of where a weight lies turns them over"
#   waivable: false
#   cite:
#     - {document: statics of a body on a hook, clause: for what rights it, basis: practice}
#     - {document: common practice, clause: for the limits, basis: practice}
package liftlint.rules.load.steady_by_little

import data.params.load.steady_by_little as p

finding contains {"key": load.key, "grade": "neutral"} if {
	some load in input.loads
	load.righting_m < p.error_m
}

finding contains {"key": load.key, "grade": "rises_little"} if {
	some load in input.loads
	load.center_may_rise_m < p.rise_m
}

finding contains {"key": load.key, "grade": "little"} if {
	some load in input.loads
	load.righting_m < p.warning_m
}
