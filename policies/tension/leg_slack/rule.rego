# METADATA
# title: Slack leg
# description: >-
#   A leg that carries nothing leaves its share to the others, and snatches
#   when the load moves. On four stiff legs it shows that lengths or points do
#   not suit the center of gravity.
# custom:
#   over: legs
#   grades:
#     - name: by_statics
#       severity: error
#     - name: by_stiffness
#       title: Leg slack with the lengths as given
#       severity: warning
#       message: "leg {slack_named} hangs slack with the lengths as given: small differences of length decide which legs carry"
#   message: "leg {slack_named} hangs slack: the other legs carry its share"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.tension.leg_slack

finding contains {"key": leg.key, "grade": "by_statics"} if {
	some leg in input.legs
	leg.split == "settled_by_statics"
	leg.slack == true
}

finding contains {"key": leg.key, "grade": "by_stiffness"} if {
	some leg in input.legs
	leg.split == "settled_by_stiffness"
	leg.slack == true
}
