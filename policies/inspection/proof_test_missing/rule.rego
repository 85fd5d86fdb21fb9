# METADATA
# title: Proof test missing
# description: >-
#   A device made for lifting is loaded beyond its rating before it is first used,
#   so that a flaw shows where nobody stands below.
# custom:
#   over: on_file
#   where:
#     uses: {at_least: 1}
#     kind: [spreader_beam, lifting_beam, rocker_plate, lifting_device]
#   params:
#     least_ratio: {default: 1.25, at_least: 1, at_most: 2}
#   grades:
#     - name: missing
#       severity: error
#       message: "no proof test of {id} that it held, with the name of who did it, is on record: it is tested with {least_ratio} of its rated load before it is first used"
#     - {name: too_low, severity: error, measured: proof_over_rated_ratio, limit: least_ratio}
#     - name: load_not_given
#       severity: warning
#       message: "the record of the proof test of {id} does not give its load: {least_ratio} of the rated load is asked for"
#   message: "{id} was proof-tested with {measured} of its rated load; {limit} is asked for"
#   cite:
#     - {document: 29 CFR 1926.251, clause: (a)(4), basis: read, profiles: [us]}
#     - {document: Directive 2006/42/EC, clause: "annex I, 4.1.2.3, for 1.5 times", basis: memory, profiles: [eu]}
#     - {document: common practice, basis: practice}
package liftlint.rules.inspection.proof_test_missing

import data.params.inspection.proof_test_missing as p

finding contains {"key": item.key, "grade": "missing"} if {
	some item in input.on_file
	item.proof_tested == "no"
}

finding contains {"key": item.key, "grade": "load_not_given"} if {
	some item in input.on_file
	item.proof_tested == "load_not_given"
}

finding contains {"key": item.key, "grade": "too_low"} if {
	some item in input.on_file
	item.proof_over_rated_ratio < p.least_ratio
}
