# METADATA
# title: Choke angle too wide
# description: >-
#   Left to itself a choke sets at about 135 degrees between the standing part and
#   the loop. One that is set wider barely grips: it opens as soon as the pull
#   eases, and the load turns in it.
# custom:
#   severity: warning
#   over: hitches
#   where:
#     kind: [choke]
#   measured: choke_angle_deg
#   limit: most_deg
#   params:
#     most_deg: {default: 135, at_least: 90, at_most: 150}
#   message: "the choke angle of {sling} on {round}, between standing part and loop, is {measured}; over {limit} the choke does not grip"
#   cite:
#     - {document: ASME B30.9, clause: as trade tables give its choke angles, basis: practice, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.hitch.choke_angle_wide

import data.params.hitch.choke_angle_wide as p

finding contains hitch.key if {
	some hitch in input.hitches
	hitch.choke_angle_deg > p.most_deg
}
