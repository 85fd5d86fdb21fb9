# METADATA
# title: Color code of the month
# description: >-
#   At the first of each month the loft goes through all gear and marks it with
#   the month's color. What bears another color, or none, has not been seen.
# custom:
#   over: gear
#   where:
#     uses: {at_least: 1}
#     in_bridle: [false]
#   params:
#     color: green
#   grades:
#     - name: other_color
#       severity: error
#       message: "{id} bears the color of another month: it has not been through the loft since"
#     - name: no_color
#       severity: error
#   message: "the plan gives no color code of {id}"
#   lowerable: false
#   waivable: false
#   cite:
#     - {document: rigging standard, clause: "4.2", basis: company}
package liftlint.rules.gear.color_code

import data.liftlint.lib
import data.params.gear.color_code as p

finding contains {"key": item.key, "grade": "other_color"} if {
	some item in input.gear
	lib.has_label(item.labels, "color_code")
	lib.label(item.labels, "color_code") != p.color
}

finding contains {"key": item.key, "grade": "no_color"} if {
	some item in input.gear
	not lib.has_label(item.labels, "color_code")
}
