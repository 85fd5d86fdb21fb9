# METADATA
# title: Inspection overdue on the day of the lift
# description: >-
#   Gear past its periodic inspection stays on the ground until a competent
#   person has looked at it. The day it is due still counts.
# custom:
#   severity: error
#   over: gear
#   where:
#     uses: {at_least: 1}
#     inspected_with_bridle: [false]
#   measured: inspection.overdue_days
#   message: "{id} is {measured} past its {inspection.named}, due on {inspection.due}{inspection.because}"
#   place: inspection
#   remedy: inspection_due
#   lowerable: false
#   waivable: false
#   cite:
#     - {document: ASME B30.9, clause: for slings, basis: memory, profiles: [us]}
#     - {document: ASME B30.26, clause: for shackles and links, basis: memory, profiles: [us]}
#     - {document: DGUV rules, clause: yearly examination of lifting accessories, basis: read, profiles: [eu]}
#     - {document: common practice, clause: "for hooks, and for fittings in severe service", basis: practice}
package liftlint.rules.inspection.overdue

finding contains item.key if {
	some item in input.gear
	item.inspection.overdue_days > 0
}
