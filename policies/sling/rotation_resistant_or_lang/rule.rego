# METADATA
# title: Rope that turns when it is loaded
# description: >-
#   Rotation-resistant rope is made for hoisting: bent round a pin or a corner its
#   layers work against each other, and inside where nobody sees it. Lang-lay rope
#   unlays unless both its ends are kept from turning, which a sling's are not.
# custom:
#   over: ropes
#   where: {make_known: [true]}
#   grades:
#     - name: rotation_resistant
#       title: Rotation-resistant rope in a sling
#       severity: error
#     - name: lang_lay
#       title: Lang-lay rope in a sling
#       severity: error
#       message: "{id} is of lang-lay rope, which unlays where an end can turn: use a sling of regular lay"
#   message: "{id} is of rotation-resistant rope, which is not used for slings"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.sling.rotation_resistant_or_lang

finding contains {"key": rope.key, "grade": "rotation_resistant"} if {
	some rope in input.ropes
	rope.rotation_resistant == true
}

finding contains {"key": rope.key, "grade": "lang_lay"} if {
	some rope in input.ropes
	rope.lang_lay == true
}
