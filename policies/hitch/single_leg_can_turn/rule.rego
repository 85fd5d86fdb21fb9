# METADATA
# title: Single leg that lets the load turn
# description: >-
#   Below one leg a load turns as it likes, and rope unwinds under it. A sling of
#   hand-tucked splices can unlay as it turns, until the tucks pull out. A tag
#   line, or a second leg, keeps the load from turning.
# custom:
#   over: legs
#   where:
#     alone: [true]
#   grades:
#     - name: hand_tucked
#       title: Hand-tucked sling that can turn
#       severity: error
#       message: "leg {id} is the only one and has hand-tucked splices, which come undone if it turns, and the plan does not say what keeps the load from turning: add `turning_held_by`"
#     - name: free
#       severity: warning
#   message: "leg {id} is the only one, and the plan does not say what keeps the load from turning: add `turning_held_by`"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.hitch.single_leg_can_turn

finding contains {"key": leg.key, "grade": "hand_tucked"} if {
	some leg in input.legs
	leg.turning_held == false
	leg.hand_tucked == true
}

finding contains {"key": leg.key, "grade": "free"} if {
	some leg in input.legs
	leg.turning_held == false
}
