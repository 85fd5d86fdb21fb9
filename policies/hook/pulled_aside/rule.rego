# METADATA
# title: Hook pulled off plumb
# description: >-
#   Of a load on several hooks, a hook that does not stand plumb over what it
#   holds is pulled aside: its hoist rope leans, its boom is loaded sideways, and
#   the cranes pull against each other.
# custom:
#   over: hooks
#   where: {of_several: [true]}
#   measured: lean_from_plumb_deg
#   params:
#     error_deg: {default: 3, at_least: 1, at_most: 5}
#     warning_deg: {default: 1, at_least: 0, at_most: 3}
#   grades:
#     - name: far
#       severity: error
#       limit: error_deg
#     - name: somewhat
#       severity: warning
#       limit: warning_deg
#   message: "hook {lean_named} is pulled off plumb by {measured}, {horizontal_n} to the side; up to {limit} is taken for plumb: what a crane stands to the side, its chart and maker say"
#   cite:
#     - {document: 29 CFR 1926.1417, clause: "(q), that nothing is dragged sideways", basis: memory, profiles: [us]}
#     - {document: common practice, clause: for the limits, basis: practice}
package liftlint.rules.hook.pulled_aside

import data.params.hook.pulled_aside as p

finding contains {"key": hook.key, "grade": "far"} if {
	some hook in input.hooks
	hook.lean_from_plumb_deg > p.error_deg
}

finding contains {"key": hook.key, "grade": "somewhat"} if {
	some hook in input.hooks
	hook.lean_from_plumb_deg > p.warning_deg
}
