# METADATA
# title: Contents that can move
# description: >-
#   A liquid or a loose part runs to the low side as soon as the load tilts, and
#   takes the center of gravity along.
# custom:
#   over: loads
#   grades:
#     - name: loose
#       severity: error
#     - name: not_given
#       title: Contents not described
#       severity: note
#       message: "the plan does not say whether anything in the load can move: add `contents`"
#   message: "something in the load can move and is not secured: the center of gravity does not stay where the plan has it"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.load.contents_can_move

finding contains {"key": load.key, "grade": "loose"} if {
	some load in input.loads
	load.contents == "loose"
}

finding contains {"key": load.key, "grade": "not_given"} if {
	some load in input.loads
	load.contents == "not_given"
}
