# METADATA
# title: Hook pulled aside
# description: >-
#   Of a load on several hooks, a hook that does not stand plumb over what it
#   holds is pulled aside: its hoist rope leans, its boom is loaded sideways, and
#   the cranes pull against each other.
# custom:
#   severity: warning
#   over: hooks
#   where: {of_several: [true]}
#   measured: lean_from_plumb_deg
#   limit: most_deg
#   params:
#     most_deg: {default: 3, at_least: 0, at_most: 15}
#   message: "hook {lean_named} is pulled {measured} out of plumb, {horizontal_n} to the side; up to {limit} is let pass"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.hook.pulled_aside

import data.params.hook.pulled_aside as p

finding contains hook.key if {
	some hook in input.hooks
	hook.lean_from_plumb_deg > p.most_deg
}
