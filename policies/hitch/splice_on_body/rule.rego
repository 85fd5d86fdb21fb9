# METADATA
# title: Basket that bears on its eye or splice
# description: >-
#   An eye, a splice, a sleeve or the stitched end of webbing is made to hang straight: where it lies on the
#   load it is bent and crushed, and nobody rates it for that. Each side of a basket
#   has to be longer than the eye and the splice or stitching at its end.
# custom:
#   severity: error
#   over: hitches
#   where:
#     kind: [basket]
#   message: "in the basket of {sling} an eye or end, with its splice or stitching, reaches on to {round}: take a longer sling, or one with shorter ends"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.hitch.splice_on_body

finding contains hitch.key if {
	some hitch in input.hitches
	hitch.splice_lies == "on_body"
}
