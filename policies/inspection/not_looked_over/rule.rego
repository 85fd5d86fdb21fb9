# METADATA
# title: Gear not looked over before the lift
# description: >-
#   A competent person looks over slings and fittings on each day that they are used:
#   what happened to them since the last inspection on record stands in no register. On
#   the morning of the lift the plan says what was seen on each, [] where it was
#   nothing, or the register that it was looked at and found fit that day.
# custom:
#   severity: warning
#   over: lifts
#   stages: [prelift]
#   message: "nothing says what is seen on {names} on the day: look over all of it before the lift and write down `faults_seen`, [] where nothing is seen, or in a register the look `before_use` with who made it"
#   place: not_looked_over
#   cite:
#     - {document: 29 CFR 1926.251, clause: (a)(6), basis: read, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.inspection.not_looked_over

finding contains {"key": lift.key, "names": lift.not_looked_over.ids} if {
	some lift in input.lifts
	count(lift.not_looked_over.ids) > 0
}
