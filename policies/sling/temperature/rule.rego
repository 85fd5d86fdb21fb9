# METADATA
# title: Sling too hot or too cold
# description: >-
#   A fiber core chars and leaves the strands without a bed; aluminum sleeves
#   soften; steel gets brittle in the cold. ASME asks for less heat on fiber
#   cores, 82 C, than the federal rule does, 93 C, and for more warmth, -40 C.
#   What heat takes from a rated load before that is taken off it. Beyond a limit
#   only the maker can say what a sling may still carry.
# custom:
#   over: ropes
#   where:
#     temperature_given: [true]
#   params:
#     fiber_most_c: {default: 82, at_least: 40, at_most: 100}
#     aluminum_most_c: {default: 150, at_least: 40, at_most: 150}
#     steel_most_c: {default: 204, at_least: 40, at_most: 400}
#     least_c: {default: -40, at_least: -60, at_most: 10}
#   grades:
#     - name: fiber_core
#       title: Fiber core too hot
#       severity: error
#       measured: highest_c
#       limit: fiber_most_c
#       message: "{id}, whose core is or may be of fiber, gets as hot as {measured}; with a fiber core {limit} is the most"
#     - name: aluminum_sleeve
#       title: Aluminum sleeve too hot
#       severity: error
#       measured: highest_c
#       limit: aluminum_most_c
#       message: "{id}, whose sleeves are or may be of aluminum, gets as hot as {measured}; with aluminum sleeves {limit} is the most"
#     - name: hot
#       title: Sling too hot
#       severity: error
#       measured: highest_c
#       limit: steel_most_c
#     - name: cold
#       title: Sling too cold
#       severity: error
#       measured: lowest_c
#       limit: least_c
#       message: "{id} gets as cold as {measured}; under {limit} its maker has to say whether it may be used"
#   message: "{id} gets as hot as {measured}; beyond {limit} its maker has to say what it may still carry"
#   waivable: false
#   cite:
#     - {document: ASME B30.9, clause: for 82 C with a fiber core and for -40 C, basis: memory, profiles: [us], grades: [fiber_core, cold]}
#     - {document: 29 CFR 1926.251, clause: "(c), for 204 C", basis: read, profiles: [us], grades: [hot]}
#     - {document: EN 13414-1, clause: for 150 C with aluminum sleeves, basis: memory, grades: [aluminum_sleeve]}
#     - {document: EN 13414-1, clause: "for 100 C with a fiber core, 400 C with a steel core and -40 C", basis: memory, profiles: [eu], grades: [fiber_core, hot, cold]}
#     - {document: common practice, clause: that the maker is asked beyond these, basis: practice}
package liftlint.rules.sling.temperature

import data.params.sling.temperature as p

finding contains {"key": rope.key, "grade": "fiber_core"} if {
	some rope in input.ropes
	rope.core in {"fiber", "not_given"}
	rope.highest_c > p.fiber_most_c
}

finding contains {"key": rope.key, "grade": "aluminum_sleeve"} if {
	some rope in input.ropes
	some metal in rope.sleeves
	metal in {"aluminum", "not_given"}
	rope.highest_c > p.aluminum_most_c
}

finding contains {"key": rope.key, "grade": "hot"} if {
	some rope in input.ropes
	rope.highest_c > p.steel_most_c
}

finding contains {"key": rope.key, "grade": "cold"} if {
	some rope in input.ropes
	rope.lowest_c < p.least_c
}
