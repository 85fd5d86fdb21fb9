# METADATA
# title: Overload not cleared
# description: >-
#   After an overload or a shock load an item is used again only when a qualified
#   person has looked at it and said so.
# custom:
#   severity: error
#   over: on_file
#   where:
#     uses: {at_least: 1}
#   message: "{named} was overloaded, and nobody is named who had cleared it by the day that is judged for: use another"
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.register.overload_not_cleared

finding contains item.key if {
	some item in input.on_file
	item.overload == "not_cleared"
}
