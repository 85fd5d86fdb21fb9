# METADATA
# title: Proof test of a beam or device too low or to come
# description: >-
#   A proof test shows something where its load is well over the rated load, and where
#   it is known when it was made: what was mended or changed after it was not tested.
# custom:
#   over: beams
#   where:
#     on_file: [false]
#     proof_test_given: [true]
#   params:
#     least_ratio: {default: 1.25, at_least: 1, at_most: 2}
#     most_ratio: {default: 1.25, at_least: 1.25, at_most: 2}
#   grades:
#     - name: after_lift
#       title: Proof test after the day of the lift
#       severity: error
#       message: "{id} is proof-tested on {proof_test_date}, after the day of the lift: until then nothing shows that it holds; read the day again, or lift after the test"
#     - name: low
#       title: Proof test of a beam or device too low
#       severity: error
#       measured: proof_test_ratio
#       limit: least_ratio
#     - name: high
#       title: Proof test of a beam or device very high
#       severity: warning
#       measured: proof_test_ratio
#       limit: most_ratio
#       message: "{id} was proof-tested with {measured} of its rated load; over {limit} its maker or a qualified person says that it took no harm"
#     - name: not_dated
#       title: Day of a proof test not given
#       severity: warning
#       message: "the plan does not give the day of the proof test of {id}: add `date` to it"
#   message: "{id} was proof-tested with {measured} of its rated load; at least {limit} is asked for"
#   cite:
#     - {document: 29 CFR 1926.251, clause: "(a)(4), for devices of special design", basis: read, profiles: [us]}
#     - {document: ASME B30.20, clause: that it is tested with no more than 1.25 times, basis: memory, profiles: [us], grades: [high]}
#     - {document: Directive 2006/42/EC, clause: "annex I, 4.1.2.3, for 1.5 times", basis: memory, profiles: [eu], grades: [low]}
#     - {document: common practice, basis: practice}
package liftlint.rules.beam.proof_test_low

import data.params.beam.proof_test_low as p

finding contains {"key": beam.key, "grade": "after_lift"} if {
	some beam in input.beams
	beam.proof_test_dated == true
	beam.proof_test_after_lift == true
}

finding contains {"key": beam.key, "grade": "low"} if {
	some beam in input.beams
	beam.proof_test_ratio < p.least_ratio
}

finding contains {"key": beam.key, "grade": "high"} if {
	some beam in input.beams
	beam.proof_test_ratio > p.most_ratio
}

finding contains {"key": beam.key, "grade": "not_dated"} if {
	some beam in input.beams
	beam.proof_test_dated == false
}
