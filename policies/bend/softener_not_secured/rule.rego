# METADATA
# title: Edge softener not secured
# description: >-
#   Pads and corner pieces fall or slip out of place as a sling goes slack, when the
#   load is set down and taken up again, and then the sling lies on the bare edge.
#   They are tied, or shaped so that they stay.
# custom:
#   over: hitches
#   where:
#     edges_protected: [true]
#     softener_secured: ["yes", "no", not_given]
#   grades:
#     - name: not_secured
#       severity: warning
#     - name: not_given
#       title: Not said whether edge softeners are secured
#       severity: note
#       message: "the plan does not say whether what softens the edges of {round} under {sling} is kept from falling or slipping: add `softener_secured`"
#   message: "what softens the edges of {round} under {sling} can fall or slip as the sling goes slack: tie it, or take pieces that stay where they are put"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.bend.softener_not_secured

finding contains {"key": hitch.key, "grade": "not_secured"} if {
	some hitch in input.hitches
	hitch.softener_secured == "no"
}

finding contains {"key": hitch.key, "grade": "not_given"} if {
	some hitch in input.hitches
	hitch.softener_secured == "not_given"
}
