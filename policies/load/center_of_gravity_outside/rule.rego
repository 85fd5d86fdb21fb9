# METADATA
# title: Center of gravity outside the load
# description: >-
#   Size and center of gravity are measured from the same datum corner. A center
#   outside the size is a slip of a digit or of the datum, and every force in the
#   plan rests on it.
# custom:
#   severity: error
#   over: loads
#   where: {size_given: [true]}
#   measured: center_outside_m
#   limit: most_m
#   params:
#     most_m: {default: 0, at_least: 0, at_most: 0.5}
#   message: "the center of gravity lies {measured} outside the load's own size: one of the two is not as written"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.load.center_of_gravity_outside

import data.params.load.center_of_gravity_outside as p

finding contains load.key if {
	some load in input.loads
	load.center_outside_m > p.most_m
}
