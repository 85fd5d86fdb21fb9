# METADATA
# title: Rope thinner than it was made
# description: >-
#   Rope gets thinner by wear, by rust within and by a core that gives way. The
#   last two are not to be seen from outside.
# custom:
#   over: signs
#   where:
#     uses: {at_least: 1}
#     what: [diameter_now]
#   params:
#     most_ratio: {default: 0.1, at_least: 0.02, at_most: 0.1}
#     watch_ratio: {default: 0.05, at_least: 0.01, at_most: 0.1}
#   grades:
#     - {name: removal, severity: error, measured: lost_ratio, limit: most_ratio}
#     - name: to_be_judged
#       severity: warning
#       measured: lost_ratio
#       limit: watch_ratio
#       message: "{id} was {measured} thinner on {date} than it was made: from {limit} on a qualified person judges it before the lift"
#   message: "{id} was {measured} thinner on {date} than it was made: from {limit} on it is taken out of service"
#   waivable: false
#   cite:
#     - {document: EN 13414-1, basis: memory, grades: [removal]}
#     - {document: common practice, basis: practice, grades: [to_be_judged]}
package liftlint.rules.inspection.diameter_lost

import data.params.inspection.diameter_lost as p

finding contains {"key": sign.key, "grade": "removal"} if {
	some sign in input.signs
	sign.lost_ratio >= p.most_ratio
}

finding contains {"key": sign.key, "grade": "to_be_judged"} if {
	some sign in input.signs
	sign.lost_ratio >= p.watch_ratio
	sign.lost_ratio < p.most_ratio
}
