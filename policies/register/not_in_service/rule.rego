# METADATA
# title: Gear that is not in service
# description: >-
#   Gear that was set apart, taken out of service or scrapped is not used,
#   whatever its tag says. Of gear whose status is not on file nobody knows
#   whether it was.
# custom:
#   over: on_file
#   where:
#     uses: {at_least: 1}
#   grades:
#     - name: scrapped
#       severity: error
#       message: "{named} is scrapped{because}: use another"
#     - name: out_of_service
#       severity: error
#       message: "{named} is out of service{because}: use another"
#     - name: quarantined
#       severity: error
#       message: "{named} is set apart until somebody has decided on it{because}: use another"
#     - name: not_given
#       severity: {draft: note, review: warning, prelift: warning}
#   message: "the register does not say whether {named} is in service"
#   waivable: false
#   cite:
#     - {document: 29 CFR 1926.251, clause: (a)(6), basis: read, profiles: [us], grades: [scrapped, out_of_service, quarantined]}
#     - {document: common practice, basis: practice}
package liftlint.rules.register.not_in_service

finding contains {"key": item.key, "grade": "scrapped"} if {
	some item in input.on_file
	item.status == "scrapped"
}

finding contains {"key": item.key, "grade": "out_of_service"} if {
	some item in input.on_file
	item.status == "out_of_service"
}

finding contains {"key": item.key, "grade": "quarantined"} if {
	some item in input.on_file
	item.status == "quarantined"
}

finding contains {"key": item.key, "grade": "not_given"} if {
	some item in input.on_file
	item.status == "not_given"
}
