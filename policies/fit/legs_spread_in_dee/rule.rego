# METADATA
# title: Legs spread in a dee shackle
# description: >-
#   A dee, or chain, shackle is narrow, with straight sides: it is made for one pull in
#   line. Legs that spread in it bear on its sides and open them. Legs are gathered in
#   a bow shackle, or in a link.
# custom:
#   severity: error
#   over: gathers
#   where: {what: [bow, pin, shackle]}
#   measured: included_angle_deg
#   limit: most_deg
#   params:
#     most_deg: {default: 10, at_least: 0, at_most: 30}
#   message: "legs spread by {measured} in {name}, and {id} is a dee shackle, made for one pull in line; over {limit} takes a bow shackle, or a link"
#   cite:
#     - {document: ASME B30.26, clause: shackles loaded at an angle, basis: memory, profiles: [us]}
#     - {document: common practice, clause: "dee shackles in line, within 5 deg to each side", basis: practice}
package liftlint.rules.fit.legs_spread_in_dee

import data.params.fit.legs_spread_in_dee as p

finding contains gather.key if {
	some gather in input.gathers
	gather.pattern == "dee"
	gather.included_angle_deg > p.most_deg
}
