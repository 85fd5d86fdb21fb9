# METADATA
# title: Length of a sling left open
# description: >-
#   A plan may leave the length of a sling open and give the height of what it
#   hangs from: the length it needs follows from that. Before the plan is
#   reviewed, a sling that there is has to take its place, since it is that one's
#   length with which the load hangs.
# custom:
#   severity: {draft: note, review: error, prelift: error}
#   over: legs
#   message: "the plan leaves the length of the sling in leg {id} open; for the load to hang as it is meant to, it needs {length_needed_m} bearing to bearing"
#   remedy: make_up
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.route.length_open

finding contains leg.key if {
	some leg in input.legs
	leg.length_open == true
}
