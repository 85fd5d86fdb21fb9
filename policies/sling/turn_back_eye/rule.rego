# METADATA
# title: Make of the eyes
# description: >-
#   In a turn-back eye the rope is folded back and the sleeve alone holds it; an
#   eye of re-laid strands keeps strength when the sleeve is lost. Practice in
#   the United States advises against turn-back eyes for overhead hoisting.
# custom:
#   grades:
#     - name: turn_back
#       title: Eye that its sleeve alone holds
#       severity: warning
#     - name: not_given
#       title: Make of the eyes not given
#       severity: note
#       message: "nothing is said of how the eyes of {id} are made"
#   over: gear
#   where:
#     kind: [wire_rope_sling]
#     uses: {at_least: 1}
#   message: "{id} has an eye that its sleeve alone holds; for overhead hoisting an eye of re-laid strands is advised"
#   cite:
#     - {document: NAVEDTRA 14080, basis: read, profiles: [us], grades: [turn_back]}
#     - {document: common practice, basis: practice}
package liftlint.rules.sling.turn_back_eye

finding contains {"key": item.key, "grade": "turn_back"} if {
	some item in input.gear
	"turn_back_sleeve" in item.eye_kinds
}

finding contains {"key": item.key, "grade": "not_given"} if {
	some item in input.gear
	"not_given" in item.eye_kinds
}
