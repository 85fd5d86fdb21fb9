# METADATA
# title: Lower fitting weaker than its leg
# description: >-
#   A hook or shackle at the lower end of a leg sees all that the leg sees. It is
#   rated for at least as much as the leg, or the tag would allow too much.
# custom:
#   severity: error
#   over: bridles
#   where:
#     lower_fittings: {at_least: 1}
#   measured: lower_fitting_over_leg_ratio
#   limit: least_ratio
#   params:
#     least_ratio: {default: 1, at_least: 1, at_most: 2}
#   message: "at the lower ends of legs of {id}: {names}; the weakest is rated for {measured} of what one leg is rated for, and at least {limit} is asked for"
#   place: weak_lower_fittings
#   remedy: stronger_lower_fitting
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.bridle.lower_fitting_weak

import data.params.bridle.lower_fitting_weak as p

finding contains {"key": bridle.key, "names": bridle.weak_lower_fittings.ids} if {
	some bridle in input.bridles
	bridle.lower_fitting_over_leg_ratio < p.least_ratio
}
