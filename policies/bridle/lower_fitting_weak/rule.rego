# METADATA
# title: Lower fitting weaker than its leg
# description: >-
#   A hook or shackle at the lower end of a leg sees all that the leg sees. It is
#   rated for at least as much as the leg, or the tag would allow too much. What one
#   leg is rated for follows from the tag of the whole, whose figure is rounded: three
#   in a hundred are left for that.
# custom:
#   severity: error
#   over: bridles
#   where:
#     lower_fittings: {at_least: 1}
#   measured: lower_fitting_over_leg_ratio
#   limit: least_ratio
#   params:
#     least_ratio: {default: 0.97, at_least: 0.97, at_most: 2}
#   message: "at the lower ends of legs of {id}: {names}; the weakest is rated for {measured} of the {one_leg_rated_n} that follows from the tag for one leg, and at least {limit} is asked for"
#   place: weak_lower_fittings
#   remedy: stronger_lower_fitting
#   waivable: false
#   cite:
#     - {document: common practice, clause: "that it is as strong as its leg; the margin for rounding is that of the makers' tables, up to 2.3 %", basis: practice}
package liftlint.rules.bridle.lower_fitting_weak

import data.params.bridle.lower_fitting_weak as p

finding contains {"key": bridle.key, "names": bridle.weak_lower_fittings.ids} if {
	some bridle in input.bridles
	bridle.lower_fitting_over_leg_ratio < p.least_ratio
}
