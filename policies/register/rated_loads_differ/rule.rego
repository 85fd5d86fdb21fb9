# METADATA
# title: Rated loads on file disagree
# description: >-
#   Where tag, register and certificate give one item two rated loads, one of them
#   is wrong, and nobody can say which without the maker.
# custom:
#   severity: error
#   over: on_file
#   where:
#     uses: {at_least: 1}
#   message: "the rated loads of {named} are not the same on: {names}; find out which is right before it is used"
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.register.rated_loads_differ

finding contains {"key": item.key, "names": item.rated_loads_unlike} if {
	some item in input.on_file
	count(item.rated_loads_unlike) > 0
}
