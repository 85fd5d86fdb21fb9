# METADATA
# title: Leg too far off the hook's axis
# description: >-
#   A hook carries along its shank. Legs that hang in it directly and pull far to
#   its sides open the bowl and slide toward the tip; a link takes them upright.
# custom:
#   severity: error
#   over: hook_uses
#   where:
#     of: [crane]
#     legs_direct: {at_least: 1}
#   measured: off_axis_deg
#   limit: most_deg
#   params:
#     most_deg: {default: 45, at_least: 15, at_most: 45}
#   message: "a leg hangs in {name} at {measured} from its axis; at most {limit} is allowed without a link that gathers the legs"
#   cite:
#     - {document: ASME B30.10, clause: 10-1.11.1, basis: memory, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.leg_off_hook_axis

import data.params.fit.leg_off_hook_axis as p

finding contains use.key if {
	some use in input.hook_uses
	use.off_axis_deg > p.most_deg
}
