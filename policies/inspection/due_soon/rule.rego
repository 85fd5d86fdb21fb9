# METADATA
# title: Inspection due soon after the lift
# description: >-
#   Gear whose periodic inspection holds on the day and runs out within weeks
#   is overdue at once if the lift is put off or takes longer. Having it
#   inspected beforehand costs less than a day's waiting.
# custom:
#   severity: note
#   over: gear
#   where:
#     uses: {at_least: 1}
#     inspected_with_bridle: [false]
#     inspection.overdue_days: {at_most: 0}
#   params:
#     soon_days: {default: 30, at_least: 0, at_most: 366}
#   message: "the {inspection.named} of {id} holds on the day and is due on {inspection.due}, within {soon_days} of it"
#   place: inspection
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.inspection.due_soon

import data.params.inspection.due_soon as p

finding contains item.key if {
	some item in input.gear
	item.inspection.overdue_days + p.soon_days >= 0
}
