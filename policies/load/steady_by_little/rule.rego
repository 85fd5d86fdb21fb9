# METADATA
# title: Little holds the load upright
# description: >-
#   A load that hangs from points in one line, with its center of gravity only
#   just below them, is steady on paper. A few centimeters that the center of
#   gravity lies higher than thought, and it turns over.
# custom:
#   over: loads
#   where:
#     hangs: [steady]
#   measured: righting_m
#   params:
#     error_m: {default: 0.001, at_least: 0, at_most: 1}
#     warning_m: {default: 0.05, at_least: 0, at_most: 1}
#   grades:
#     - name: neutral
#       severity: error
#       limit: error_m
#       message: "nothing rights the load when it is turned: its center of gravity lies level with what it hangs from"
#     - name: little
#       severity: warning
#       limit: warning_m
#   message: "the load hangs no steadier than a pendulum {measured} long; under {limit} a small error of the center of gravity turns it over"
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

finding contains {"key": load.key, "grade": "little"} if {
	some load in input.loads
	load.righting_m < p.warning_m
}
