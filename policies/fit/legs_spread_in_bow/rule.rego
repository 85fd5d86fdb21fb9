# METADATA
# title: Legs spread too wide in a shackle
# description: >-
#   Legs that are gathered in one shackle pull its sides apart as they spread.
#   Beyond the limit its rated load no longer holds, whatever the legs carry.
# custom:
#   severity: error
#   over: gathers
#   where: {what: [bow, pin, shackle]}
#   measured: included_angle_deg
#   limit: most_deg
#   params:
#     most_deg: {default: 120, at_least: 30, at_most: 120}
#   message: "legs spread by {measured} in {name}; at most {limit} is allowed between two of them"
#   cite:
#     - {document: ASME B30.26, clause: shackles, basis: memory, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.legs_spread_in_bow

import data.params.fit.legs_spread_in_bow as p

finding contains gather.key if {
	some gather in input.gathers
	gather.included_angle_deg > p.most_deg
}
