# METADATA
# title: Basket on a load that is tilted
# description: >-
#   A basket lies in its place while the body under it is level. On a load that is
#   meant to be tilted or turned over it slides to the lower end, unless a stop
#   keeps it.
# custom:
#   severity: error
#   over: hitches
#   where:
#     kind: [basket]
#     on: [round_body, body_with_corners]
#     load_tilts: [true]
#   message: "{sling} lies in a basket round {round}, which is meant to be tilted, and the plan does not say what keeps it from sliding along it: put it against a stop, or choke it"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.hitch.basket_on_tilted_load

finding contains hitch.key if {
	some hitch in input.hitches
	hitch.held_against_sliding == false
}
