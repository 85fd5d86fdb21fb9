# METADATA
# title: Hook twisted
# description: >-
#   A hook whose tip stands out of line was loaded from the side, or beyond its
#   rating.
# custom:
#   over: signs
#   where:
#     uses: {at_least: 1}
#     what: [twist]
#   params:
#     most_deg: {default: 1, at_least: 1, at_most: 10}
#     seen_deg: {default: 0.5, at_least: 0.5, at_most: 10}
#   grades:
#     - {name: removal, severity: error, measured: twist_out_of_plane_deg, limit: most_deg}
#     - name: to_be_judged
#       severity: warning
#       measured: twist_out_of_plane_deg
#       limit: seen_deg
#       message: "the hook of {id} was twisted {measured} out of its plane on {date}: from {limit} on a qualified person judges it before the lift"
#   message: "the hook of {id} was twisted {measured} out of its plane on {date}: from {limit} on it is taken out of service"
#   waivable: false
#   cite:
#     - {document: ASME B30.10, clause: any twist that can be seen, basis: memory, profiles: [us], grades: [removal]}
#     - {document: 29 CFR 1910.184, clause: "(f)(5), for 10 degrees, at the latest", basis: read, profiles: [us], grades: [removal]}
#     - {document: common practice, basis: practice}
package liftlint.rules.inspection.hook_twisted

import data.params.inspection.hook_twisted as p

finding contains {"key": sign.key, "grade": "removal"} if {
	some sign in input.signs
	sign.twist_out_of_plane_deg >= p.most_deg
}

finding contains {"key": sign.key, "grade": "to_be_judged"} if {
	some sign in input.signs
	sign.twist_out_of_plane_deg >= p.seen_deg
	sign.twist_out_of_plane_deg < p.most_deg
}
