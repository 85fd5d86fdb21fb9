# METADATA
# title: Rope too thin for a sling
# description: >-
#   Thin rope has thin wires, which wear through and are cut soon, and kinks
#   easily. European practice makes no slings of rope under 8 mm; tables of
#   rope for slings in the United States begin at 1/4 in.
# custom:
#   severity: error
#   over: ropes
#   measured: diameter_m
#   limit: least_m
#   params:
#     least_m: {default: 0.008, at_least: 0, at_most: 0.03}
#   message: "the rope of {id} is {measured} thick; slings are made of rope of {limit} and more"
#   remedy: thicker_rope
#   cite:
#     - {document: DGUV 109-005, clause: for 8 mm, basis: read, profiles: [eu]}
#     - {document: common practice, clause: tables of rope strength begin at 1/4 in, basis: practice}
package liftlint.rules.sling.rope_too_thin

import data.params.sling.rope_too_thin as p

finding contains rope.key if {
	some rope in input.ropes
	rope.diameter_m < p.least_m
}
