# METADATA
# title: Record of an inspection incomplete
# description: >-
#   A record counts for what it says. Without the inspector and the outcome it
#   does not show that anybody found the item fit; without measures the next
#   inspector can not tell how fast it wears.
# custom:
#   over: on_file
#   where:
#     uses: {at_least: 1}
#     inspected: [true]
#   grades:
#     - name: shows_nothing
#       severity: error
#       message: "the record of the inspection of {id} on {newest.date} does not show that somebody found it fit; it does not give: {names}"
#     - name: not_all_said
#       severity: warning
#   message: "the record of the inspection of {id} on {newest.date} does not give: {names}"
#   place: newest
#   waivable: false
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.inspection.record_incomplete

finding contains {"key": item.key, "grade": "shows_nothing", "names": item.newest.lacks} if {
	some item in input.on_file
	"inspector" in item.newest.lacks
}

finding contains {"key": item.key, "grade": "shows_nothing", "names": item.newest.lacks} if {
	some item in input.on_file
	"outcome" in item.newest.lacks
}

finding contains {"key": item.key, "grade": "not_all_said", "names": item.newest.lacks} if {
	some item in input.on_file
	count(item.newest.lacks) > 0
	not "inspector" in item.newest.lacks
	not "outcome" in item.newest.lacks
}
