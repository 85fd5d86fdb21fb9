# METADATA
# title: Swivel that turns under load, in line with an ordinary rope
# description: >-
#   Rope of six or eight strands turns where an end is free to, and unlays: it loses
#   strength, and its wires are loaded unequally. A swivel that turns while it
#   carries leaves it free; one that only takes its place before does not.
# custom:
#   over: legs
#   grades:
#     - name: load_bearing
#       severity: error
#     - name: not_given
#       title: Not said whether a swivel turns under load
#       severity: warning
#       message: "the plan does not say whether the swivel in leg {id} turns under load, which would unlay its rope: add `turns_under_load`"
#   message: "the swivel in leg {id} turns under load and lets its rope unlay: take it out, or one that only takes its place"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.hitch.swivel_in_line

finding contains {"key": leg.key, "grade": "load_bearing"} if {
	some leg in input.legs
	leg.swivel_in_line == "load_bearing"
}

finding contains {"key": leg.key, "grade": "not_given"} if {
	some leg in input.legs
	leg.swivel_in_line == "not_given"
}
