# METADATA
# title: Found unfit at its last inspection
# description: >-
#   The newest inspection of the whole item did not pass it. It stays out of
#   service until it has been put right and has passed another.
# custom:
#   severity: error
#   over: on_file
#   where:
#     uses: {at_least: 1}
#     inspected: [true]
#     newest.outcome: [passed, passed_with_remarks, failed]
#   message: "{id} was found unfit on {newest.date}, and has passed no inspection since: use another"
#   place: newest
#   waivable: false
#   cite:
#     - {document: 29 CFR 1926.251, clause: (a)(6), basis: read, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.inspection.found_unfit

finding contains item.key if {
	some item in input.on_file
	item.newest.outcome == "failed"
}
