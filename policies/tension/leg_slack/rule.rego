# METADATA
# title: Slack leg
# description: >-
#   A leg that carries nothing leaves its share to the others, and snatches
#   when the load moves. On four stiff legs it shows that lengths or points do
#   not suit the center of gravity.
# custom:
#   severity: error
#   over: legs
#   message: "leg {id} to {to} hangs slack: the other legs carry its share"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.tension.leg_slack

finding contains leg.key if {
	some leg in input.legs
	leg.slack == true
}
