# METADATA
# title: Proof test of a beam or device missing
# description: >-
#   A device made for lifting is loaded beyond its rating before it is first used, so
#   that a flaw shows where nobody stands below. Of one that comes from a gear register
#   the record there is looked at.
# custom:
#   over: beams
#   where:
#     on_file: [false]
#   grades:
#     - name: device
#       severity: {draft: note, review: error, prelift: error}
#     - name: beam
#       severity: {draft: note, review: warning, prelift: error}
#   message: "the plan tells of no proof test of {id}: it is tested with more than its rated load before it is first used; add `proof_test`"
#   cite:
#     - {document: 29 CFR 1926.251, clause: "(a)(4), for devices of special design", basis: read, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.beam.proof_test_missing

finding contains {"key": beam.key, "grade": "device"} if {
	some beam in input.beams
	beam.kind == "lifting_device"
	beam.proof_test_given == false
}

finding contains {"key": beam.key, "grade": "beam"} if {
	some beam in input.beams
	beam.proof_test_given == false
}
