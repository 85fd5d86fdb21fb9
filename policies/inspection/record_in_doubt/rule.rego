# METADATA
# title: Record in doubt
# description: >-
#   A record counts by its day and its outcome. One dated after the day that is
#   judged for does not count yet; where its year is mistyped it would. One that
#   does not say what it came to may be of an item that was found unfit.
# custom:
#   over: doubtful_records
#   where:
#     uses: {at_least: 1}
#   grades:
#     - name: unfit_later
#       severity: error
#       message: "the {named} of {id} is dated {date}, after the day that is judged for, and says: {says}; see whether the year is right, and until then use another"
#     - name: without_outcome
#       severity: error
#       message: "the record of the {named} of {id} on {date} does not say what it came to, and nobody who is named has found it fit since in one that goes as far"
#     - name: later
#       severity: {draft: note, review: warning, prelift: warning}
#       message: "the {named} of {id} is dated {date}, after the day that is judged for, and does not count; it says: {says}; see whether the year is right"
#     - name: look_without_outcome
#       severity: {draft: note, review: warning, prelift: warning}
#       message: "the record of the {named} of {id} on {date} does not say what it came to, and nobody who is named has found it fit since"
#     - name: due_before_it
#       severity: {draft: note, review: warning, prelift: warning}
#   message: "the record of the {named} of {id} on {date} contradicts itself: it sets {says}, before its own day, for the next"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.inspection.record_in_doubt

finding contains {"key": record.key, "grade": "unfit_later"} if {
	some record in input.doubtful_records
	record.doubt == "unfit_after_the_day"
}

finding contains {"key": record.key, "grade": "without_outcome"} if {
	some record in input.doubtful_records
	record.doubt == "inspection_without_outcome"
}

finding contains {"key": record.key, "grade": "later"} if {
	some record in input.doubtful_records
	record.doubt == "after_the_day"
}

finding contains {"key": record.key, "grade": "look_without_outcome"} if {
	some record in input.doubtful_records
	record.doubt == "look_without_outcome"
}

finding contains {"key": record.key, "grade": "due_before_it"} if {
	some record in input.doubtful_records
	record.doubt == "due_before_it"
}
