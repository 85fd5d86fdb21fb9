# METADATA
# title: History not known
# description: >-
#   Gear that nobody can say where it has been may have been overloaded, heated or
#   mended. It is used only when a qualified person has looked at it.
# custom:
#   severity: error
#   over: on_file
#   where:
#     uses: {at_least: 1}
#     history_known: ["yes", "no"]
#   message: "of {named} it is on file that its history is not known: have a qualified person inspect it, and record that"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.register.history_unknown

finding contains item.key if {
	some item in input.on_file
	item.history_known == "no"
}
