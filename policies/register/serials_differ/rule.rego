# METADATA
# title: Papers of another item
# description: >-
#   A certificate or a tag with another serial number belongs to another item, and
#   says nothing of this one.
# custom:
#   severity: error
#   over: on_file
#   where:
#     uses: {at_least: 1}
#   message: "the serial numbers of {named} are not the same on: {names}; one of them belongs to another item"
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.register.serials_differ

finding contains {"key": item.key, "names": item.serials_unlike} if {
	some item in input.on_file
	count(item.serials_unlike) > 0
}
