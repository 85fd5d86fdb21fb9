# METADATA
# title: Construction of the rope against the bend
# description: >-
#   Rope of few, thick wires is stiff, and its wires tire where it is bent round
#   something small; rope of many, thin wires lies down better. A fiber core is crushed
#   in a sharp bend and then carries its strands no more.
# custom:
#   over: hitches
#   where:
#     sling_kind: [wire_rope_sling, grommet]
#   measured: body_over_rope_ratio
#   limit: least_ratio
#   params:
#     least_ratio: {default: 10, at_least: 5, at_most: 25}
#     stiff: [6x7, 6x19, 8x19]
#   grades:
#     - name: stiff
#       severity: note
#     - name: fiber_core
#       severity: note
#       message: "{sling} has a fiber core and is bent round {round}, {measured} times as thick as its rope; under {limit} the core is crushed: an independent wire rope core holds its strands better"
#   message: "{sling} is of rope of class {rope_class}, of few and thick wires, and is bent round {round}, {measured} times as thick as its rope; under {limit} a class of many, thin wires such as 6x36 lies down better and lasts longer"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.hitch.construction_for_bend

import data.params.hitch.construction_for_bend as p

finding contains {"key": hitch.key, "grade": "stiff"} if {
	some hitch in input.hitches
	hitch.rope_class in p.stiff
	hitch.body_over_rope_ratio < p.least_ratio
}

finding contains {"key": hitch.key, "grade": "fiber_core"} if {
	some hitch in input.hitches
	hitch.rope_core == "fiber"
	hitch.body_over_rope_ratio < p.least_ratio
}
