# METADATA
# title: Load not confirmed for the compression from its legs
# description: >-
#   Inclined legs pull inward as well as up. A skid or a panel that stands on its
#   own feet all its life may buckle or rack under that compression.
# custom:
#   severity: warning
#   over: loads
#   where: {strength_confirmed: [false]}
#   measured: flattest_leg_from_horizontal_deg
#   limit: plumb_deg
#   params:
#     plumb_deg: {default: 85, at_least: 60, at_most: 90}
#   message: "its legs, the flattest at {flattest_leg_from_horizontal_deg} from horizontal (from {plumb_deg} on a leg counts as plumb), put up to {thrust_n} of compression into the load, and the plan does not say who or what confirms that it bears that: add `strength_confirmed_by`"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.load.strength_not_confirmed

import data.params.load.strength_not_confirmed as p

finding contains load.key if {
	some load in input.loads
	load.flattest_leg_from_horizontal_deg < p.plumb_deg
}
