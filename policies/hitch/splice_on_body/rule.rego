# METADATA
# title: Basket that bears on its eye or splice
# description: >-
#   An eye, a splice or a sleeve is made to hang straight: where it lies on the
#   load it is bent and crushed, and nobody rates it for that. Each side of a basket
#   has to be longer than the eye and the splice at its end.
# custom:
#   severity: error
#   over: hitches
#   where:
#     kind: [basket]
#   message: "in the basket of {sling} an eye with its splice reaches on to {round}: take a longer sling, or one with shorter eyes"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.hitch.splice_on_body

finding contains hitch.key if {
	some hitch in input.hitches
	hitch.splice_lies == "on_body"
}
