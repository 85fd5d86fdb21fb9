# METADATA
# title: Fitting too hot or too cold
# description: >-
#   Steel of rigging hardware grows brittle in the cold and loses strength in the
#   heat. Beyond the usual range only its maker can say what it may still carry, and no
#   rated load is taken for it.
# custom:
#   over: gear
#   where:
#     kind: [shackle, master_link, intermediate_link, hook, load_cell, turnbuckle, adjuster, swivel, sheave_block]
#     uses: {at_least: 1}
#     temperature_given: [true]
#   params:
#     cold_c: {default: -40, at_least: -60, at_most: 0}
#     hot_c: {default: 204, at_least: 60, at_most: 204}
#   grades:
#     - name: hot
#       title: Fitting too hot
#       severity: error
#       measured: highest_c
#       limit: hot_c
#     - name: cold
#       title: Fitting too cold
#       severity: error
#       measured: lowest_c
#       limit: cold_c
#       message: "{id} gets as cold as {measured}; below {limit} its maker has to say what it may carry"
#   message: "{id} gets as hot as {measured}; above {limit} its maker has to say what it may carry"
#   waivable: false
#   cite:
#     - {document: ASME B30.26, basis: memory}
package liftlint.rules.hardware.temperature

import data.params.hardware.temperature as p

finding contains {"key": item.key, "grade": "hot"} if {
	some item in input.gear
	item.highest_c > p.hot_c
}

finding contains {"key": item.key, "grade": "cold"} if {
	some item in input.gear
	item.lowest_c < p.cold_c
}
