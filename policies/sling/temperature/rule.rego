# METADATA
# title: Sling too hot or too cold
# description: >-
#   A fiber core chars and leaves the strands without a bed; aluminum sleeves
#   soften; steel gets brittle in the cold. ASME asks for less heat on fiber
#   cores, 82 C, than the federal rule does, 93 C, and for more warmth, -40 C.
#   Beyond a limit only the maker can say what a sling may still carry.
# custom:
#   over: ropes
#   where:
#     temperature_given: [true]
#   params:
#     fiber_most_c: {default: 82, at_least: 40, at_most: 100}
#     steel_most_c: {default: 204, at_least: 40, at_most: 400}
#     least_c: {default: -40, at_least: -60, at_most: 10}
#   grades:
#     - name: fiber_core
#       title: Fiber core too hot
#       severity: error
#       measured: highest_c
#       limit: fiber_most_c
#       message: "{id}, whose core is or may be of fiber, gets as hot as {measured}; with a fiber core {limit} is the most"
#     - name: hot
#       title: Sling too hot
#       severity: error
#       measured: highest_c
#       limit: steel_most_c
#     - name: hot_with_steel_sleeves
#       title: Sling too hot
#       severity: error
#       measured: highest_c
#       limit: steel_most_c
#       message: "{id} gets as hot as {measured}; beyond {limit} it carries less, and its maker has to say how much: no rated load is lowered for it here"
#     - name: cold
#       title: Sling too cold
#       severity: error
#       measured: lowest_c
#       limit: least_c
#       message: "{id} gets as cold as {measured}; under {limit} its maker has to say whether it may be used"
#   message: "{id} gets as hot as {measured}; slings like it are used up to {limit}"
#   waivable: false
#   cite:
#     - {document: ASME B30.9, clause: for 82 C with a fiber core and for -40 C, basis: memory, profiles: [us], grades: [fiber_core, cold]}
#     - {document: 29 CFR 1926.251, clause: "(c), for 204 C", basis: read, profiles: [us], grades: [hot, hot_with_steel_sleeves]}
#     - {document: EN 13414-1, clause: "for 100 C with a fiber core, 150 C with aluminum sleeves and -40 C", basis: memory, profiles: [eu], grades: [fiber_core, hot, cold]}
#     - {document: common practice, clause: that the maker is asked beyond these, basis: practice}
package liftlint.rules.sling.temperature

import data.params.sling.temperature as p

finding contains {"key": rope.key, "grade": "fiber_core"} if {
	some rope in input.ropes
	rope.core in {"fiber", "not_given"}
	rope.highest_c > p.fiber_most_c
}

finding contains {"key": rope.key, "grade": "hot"} if {
	some rope in input.ropes
	"aluminum" in rope.sleeves
	rope.highest_c > p.steel_most_c
}

finding contains {"key": rope.key, "grade": "hot"} if {
	some rope in input.ropes
	"not_given" in rope.sleeves
	rope.highest_c > p.steel_most_c
}

finding contains {"key": rope.key, "grade": "hot_with_steel_sleeves"} if {
	some rope in input.ropes
	rope.highest_c > p.steel_most_c
}

finding contains {"key": rope.key, "grade": "cold"} if {
	some rope in input.ropes
	rope.lowest_c < p.least_c
}
