# METADATA
# title: Stretched
# description: >-
#   What has become longer for good has carried more than it can. A leg that
#   differs from its register also shares the load otherwise than computed.
# custom:
#   over: signs
#   where:
#     uses: {at_least: 1}
#     what: [stretch, length_now]
#   params:
#     chain_ratio: {default: 0.05, at_least: 0.01, at_most: 0.05}
#     fitting_ratio: {default: 0.1, at_least: 0.01, at_most: 0.1}
#     longer_ratio: {default: 0.02, at_least: 0.005, at_most: 0.1}
#   grades:
#     - {name: chain, severity: error, measured: grew_ratio, limit: chain_ratio}
#     - {name: fitting, severity: error, measured: grew_ratio, limit: fitting_ratio}
#     - name: longer
#       severity: warning
#       measured: grew_ratio
#       limit: longer_ratio
#       message: "{id} was longer than the register says by {measured} on {date}: from {limit} on a qualified person judges it, and the lift is computed with the length it has"
#     - name: longer_chain
#       severity: warning
#       measured: grew_ratio
#       limit: longer_ratio
#       message: "{id} was longer than the register says by {measured} on {date}: from {limit} on a qualified person judges it, and the lift is computed with the length it has"
#   message: "{id} had become longer by {measured} on {date}: from {limit} on it is taken out of service"
#   waivable: false
#   cite:
#     - {document: EN 818-6, basis: memory, grades: [chain]}
#     - {document: ASME B30.26, basis: memory, grades: [fitting]}
#     - {document: common practice, basis: practice, grades: [longer, longer_chain]}
package liftlint.rules.inspection.stretched

import data.params.inspection.stretched as p

finding contains {"key": sign.key, "grade": "chain"} if {
	some sign in input.signs
	sign.kind == "chain_sling"
	sign.grew_ratio >= p.chain_ratio
}

finding contains {"key": sign.key, "grade": "fitting"} if {
	some sign in input.signs
	sign.what == "stretch"
	sign.kind != "chain_sling"
	sign.grew_ratio >= p.fitting_ratio
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
	sign.grew_ratio < p.chain_ratio
}
