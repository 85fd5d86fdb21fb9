# METADATA
# title: Choke angle not stated
# description: >-
#   A choker that shares the load with others and leans along it is pulled aside
#   in its choke, and how the choke is set says what it may carry. Left unsaid,
#   it is taken as it sets itself on a load that hangs free.
# custom:
#   severity: warning
#   over: hitches
#   where:
#     kind: [choke]
#     choke_angle_given: [false]
#     legs_on_load: {at_least: 2}
#   measured: lean_along_body_deg
#   limit: plumb_deg
#   params:
#     plumb_deg: {default: 5, at_least: 0, at_most: 30}
#   message: "{sling} is choked on {round} and leans {measured} along it, which is more than {limit}, and the plan does not say how the choke is set: {choke_angle_deg} between standing part and loop is taken"
#   cite:
#     - {document: 29 CFR 1910.184, clause: "(b), for 5 degrees as vertical", basis: read, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.hitch.choke_angle_not_given

import data.params.hitch.choke_angle_not_given as p

finding contains hitch.key if {
	some hitch in input.hitches
	hitch.lean_along_body_deg > p.plumb_deg
}
