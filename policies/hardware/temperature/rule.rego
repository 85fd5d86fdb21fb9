# METADATA
# title: Fitting too hot or too cold
# description: >-
#   Steel of rigging hardware grows brittle in the cold and loses strength in the
#   heat. Links and hooks of a chain's grade stand what the chain does, at what is left
#   of their rated load. Beyond the usual range only its maker can say what it may still carry, and no
#   rated load is taken for it.
# custom:
#   over: gear
#   where:
#     kind: [shackle, master_link, intermediate_link, hook, load_cell, turnbuckle, adjuster, swivel, sheave_block]
#     uses: {at_least: 1}
#     temperature_given: [true]
#   params:
#     cold_c: {default: -40, at_least: -60, at_most: 0}
#     graded_cold_c: {default: -40, at_least: -60, at_most: 0}
#     hot_c: {default: 204, at_least: 60, at_most: 204}
#     graded_hot_c: {default: 538, at_least: 60, at_most: 538}
#   grades:
#     - name: hot
#       title: Fitting too hot
#       severity: error
#       measured: highest_c
#       limit: hot_c
#     - name: graded_hot
#       title: Fitting of a chain's grade too hot
#       severity: error
#       measured: highest_c
#       limit: graded_hot_c
#     - name: cold
#       title: Fitting too cold
#       severity: error
#       measured: lowest_c
#       limit: cold_c
#       message: "{id} gets as cold as {measured}; below {limit} its maker has to say what it may carry"
#     - name: graded_cold
#       title: Fitting of a chain's grade too cold
#       severity: error
#       measured: lowest_c
#       limit: graded_cold_c
#       message: "{id} gets as cold as {measured}; below {limit} its maker has to say what it may carry"
#   message: "{id} gets as hot as {measured}; above {limit} its maker has to say what it may carry"
#   waivable: false
#   cite:
#     - {document: ASME B30.26, basis: memory, profiles: [us], grades: [hot, cold]}
#     - {document: EN 13889, basis: memory, profiles: [eu], grades: [hot, cold]}
#     - {document: common practice, clause: "tables of chain in heat, which links and hooks of its grade follow", basis: practice}
package liftlint.rules.hardware.temperature

import data.params.hardware.temperature as p

finding contains {"key": item.key, "grade": "hot"} if {
	some item in input.gear
	item.steel in {"carbon", "alloy", "grade_12", "not_given"}
	item.highest_c > p.hot_c
}

finding contains {"key": item.key, "grade": "graded_hot"} if {
	some item in input.gear
	item.steel in {"grade_8", "grade_10"}
	item.highest_c > p.graded_hot_c
}

finding contains {"key": item.key, "grade": "cold"} if {
	some item in input.gear
	item.steel in {"carbon", "alloy", "grade_12", "not_given"}
	item.lowest_c < p.cold_c
}

finding contains {"key": item.key, "grade": "graded_cold"} if {
	some item in input.gear
	item.steel in {"grade_8", "grade_10"}
	item.lowest_c < p.graded_cold_c
}
