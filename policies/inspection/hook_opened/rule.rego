# METADATA
# title: Hook opened
# description: >-
#   A hook gives before it breaks: one whose throat has opened has seen more than
#   it is rated for.
# custom:
#   over: signs
#   where:
#     uses: {at_least: 1}
#     what: [throat_now]
#   params:
#     opened_ratio: {default: 0.05, at_least: 0.01, at_most: 0.15}
#     opened_m: {default: 0.00635, at_least: 0.001, at_most: 0.00635}
#   grades:
#     - {name: opened, severity: error, measured: grew_ratio, limit: opened_ratio}
#     - name: opened_far
#       severity: error
#       measured: grew_m
#       limit: opened_m
#       message: "the throat of {id} had opened by {measured} on {date}: over {limit} it is taken out of service"
#   message: "the throat of {id} had opened by {measured} on {date}: from {limit} on it is taken out of service"
#   waivable: false
#   cite:
#     - {document: ASME B30.10, basis: memory}
package liftlint.rules.inspection.hook_opened

import data.params.inspection.hook_opened as p

finding contains {"key": sign.key, "grade": "opened"} if {
	some sign in input.signs
	sign.grew_ratio >= p.opened_ratio
}

finding contains {"key": sign.key, "grade": "opened_far"} if {
	some sign in input.signs
	sign.grew_ratio < p.opened_ratio
	sign.grew_m > p.opened_m
}
