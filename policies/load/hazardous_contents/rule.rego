# METADATA
# title: Hazardous contents without precaution
# description: >-
#   What burns, poisons, corrodes or stands under pressure asks for more than a
#   good hitch: drained, purged, tested, people away.
# custom:
#   over: loads
#   where: {contents: [none, secured, loose]} # where the plan says nothing of them, load/contents_can_move does
#   grades:
#     - name: without_precaution
#       severity: error
#     - name: not_given
#       title: Hazard of the contents not stated
#       severity: note
#       message: "the plan does not say whether what is in the load is hazardous: add `hazardous` to its contents"
#   message: "what is in the load is hazardous, and the plan states no precaution"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.load.hazardous_contents

finding contains {"key": load.key, "grade": "without_precaution"} if {
	some load in input.loads
	load.hazard == "without_precaution"
}

finding contains {"key": load.key, "grade": "not_given"} if {
	some load in input.loads
	load.hazard == "not_given"
}
