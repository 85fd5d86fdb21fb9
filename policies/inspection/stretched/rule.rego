# METADATA
# title: Stretched
# description: >-
#   What has become longer for good has carried more than it can, and what measuring
#   may be out by is all that is left for it. A leg that differs from its register
#   also shares the load otherwise than computed.
# custom:
#   over: signs
#   where:
#     uses: {at_least: 1}
#     what: [stretch, length_now]
#   params:
#     chain_ratio: {default: 0.01, at_least: 0.01, at_most: 0.05}
#     fitting_ratio: {default: 0.01, at_least: 0.01, at_most: 0.05}
#     judged_ratio: {default: 0.005, at_least: 0.005, at_most: 0.02}
#     chain_length_ratio: {default: 0.05, at_least: 0.02, at_most: 0.05}
#     longer_ratio: {default: 0.02, at_least: 0.005, at_most: 0.1}
#   grades:
#     - {name: chain, severity: error, measured: grew_ratio, limit: chain_ratio}
#     - {name: fitting, severity: error, measured: grew_ratio, limit: fitting_ratio}
#     - {name: chain_length, severity: error, measured: grew_ratio, limit: chain_length_ratio}
#     - name: to_be_judged
#       severity: warning
#       measured: grew_ratio
#       limit: judged_ratio
#       message: "{id} had become longer by {measured} on {date}: from {limit} on, which is more than measuring it is out by, a qualified person judges it before the lift"
#     - name: longer
#       severity: warning
#       measured: grew_ratio
#       limit: longer_ratio
#       message: "{id} was longer than the register says by {measured} on {date}: from {limit} on a qualified person judges it; what is computed here has the length of the register"
#     - name: longer_chain
#       severity: warning
#       measured: grew_ratio
#       limit: longer_ratio
#       message: "{id} was longer than the register says by {measured} on {date}: from {limit} on a qualified person judges it; what is computed here has the length of the register"
#   message: "{id} had become longer by {measured} on {date}: from {limit} on it is taken out of service"
#   waivable: false
#   cite:
#     - {document: ASME B30.9, clause: stretched chain, basis: memory, profiles: [us], grades: [chain]}
#     - {document: ASME B30.26, clause: elongated hardware, basis: memory, profiles: [us], grades: [fitting]}
#     - {document: common practice, clause: "that nothing is used that has stretched, and what measuring is out by; 5 % of German practice for the eu profile", basis: practice}
package liftlint.rules.inspection.stretched

import data.params.inspection.stretched as p

finding contains {"key": sign.key, "grade": "chain"} if {
	some sign in input.signs
	sign.what == "stretch"
	sign.kind == "chain_sling"
	sign.grew_ratio >= p.chain_ratio
}

finding contains {"key": sign.key, "grade": "fitting"} if {
	some sign in input.signs
	sign.what == "stretch"
	sign.kind != "chain_sling"
	sign.grew_ratio >= p.fitting_ratio
}

finding contains {"key": sign.key, "grade": "chain_length"} if {
	some sign in input.signs
	sign.what == "length_now"
	sign.kind == "chain_sling"
	sign.grew_ratio >= p.chain_length_ratio
}

finding contains {"key": sign.key, "grade": "to_be_judged"} if {
	some sign in input.signs
	sign.what == "stretch"
	sign.grew_ratio >= p.judged_ratio
}

finding contains {"key": sign.key, "grade": "longer"} if {
	some sign in input.signs
	sign.what == "length_now"
	sign.kind != "chain_sling"
	sign.grew_ratio >= p.longer_ratio
}

finding contains {"key": sign.key, "grade": "longer_chain"} if {
	some sign in input.signs
	sign.what == "length_now"
	sign.kind == "chain_sling"
	sign.grew_ratio >= p.longer_ratio
	sign.grew_ratio < p.chain_length_ratio
}
