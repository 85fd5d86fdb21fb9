# METADATA
# title: Screw pin that can turn
# description: >-
#   A screw pin backs out of its thread where the load is turned while it hangs, and
#   with time. There a bolt with nut and cotter is used, or the pin is moused.
# custom:
#   over: gear
#   where:
#     kind: [shackle]
#     uses: {at_least: 1}
#   grades:
#     - name: left_in_place
#       severity: warning
#       message: "{id} stays in place, and its screw pin can work loose: take one with a bolt, nut and cotter, or mouse the pin and give `pin_secured`"
#     - name: turned
#       severity: warning
#   message: "the load is turned on {id}, which can turn its screw pin out: take one with a bolt, nut and cotter, or mouse the pin and give `pin_secured`"
#   cite:
#     - {document: ASME B30.26, basis: memory, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.hardware.screw_pin_can_turn

finding contains {"key": item.key, "grade": "left_in_place"} if {
	some item in input.gear
	item.pin_turned_by == "time"
}

finding contains {"key": item.key, "grade": "turned"} if {
	some item in input.gear
	item.pin_turned_by == "turning_load"
}
