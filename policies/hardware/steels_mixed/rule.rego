# METADATA
# title: Fittings of different grades
# description: >-
#   Parts of different grades look alike and do not carry alike. Each is judged by
#   its own mark; whoever replaces one on site takes the wrong one easily.
# custom:
#   severity: note
#   over: legs
#   where:
#     steels_named: {at_least: 2}
#   message: "the fittings of leg {id} are of different grades of steel: the weakest decides, and spares are mixed up easily"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.hardware.steels_mixed

finding contains leg.key if {
	some leg in input.legs
	leg.steels_mixed == true
}
