# METADATA
# title: Gear in no leg
# description: >-
#   An item that the plan lists and puts nowhere is a leg written down wrongly,
#   or a leftover that a crew will look for on the day.
# custom:
#   severity: warning
#   over: gear
#   where: {in_bridle: [false]}
#   message: "{id} is in no leg and no link: use it, or take it out of the plan"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.route.gear_unused

finding contains item.key if {
	some item in input.gear
	item.uses == 0
}
