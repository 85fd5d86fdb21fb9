# METADATA
# title: Opposite legs on one intermediate link
# description: >-
#   Two legs on one intermediate link go to points next to each other. Where they
#   go to opposite corners the link is pulled wide, and the legs of the two links
#   cross.
# custom:
#   severity: error
#   over: bridles
#   message: "the legs on one intermediate link of {id} go to opposite corners: put neighboring legs on one link"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.bridle.diagonal_pairs

finding contains bridle.key if {
	some bridle in input.bridles
	bridle.grouped_as == "diagonal"
}
