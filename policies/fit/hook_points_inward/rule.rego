# METADATA
# title: Hook points inward
# description: >-
#   Hooks at the lower ends point away from the middle of the load. One that
#   points inward is pushed out of its hole by slack, and its tip and latch take
#   the pull of an inclined leg.
# custom:
#   severity: warning
#   over: hook_uses
#   where: {of: [sling]}
#   message: "hook {name} points inward: turn it round, so that slack does not push it out"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.hook_points_inward

finding contains use.key if {
	some use in input.hook_uses
	use.points == "inward"
}
