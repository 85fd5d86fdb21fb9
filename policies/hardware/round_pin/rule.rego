# METADATA
# title: Shackle with a round pin
# description: >-
#   A round pin is held by a cotter alone. It is not for a shackle that is pulled
#   aside, and outside what the standard for rigging hardware covers.
# custom:
#   severity: warning
#   over: gear
#   where:
#     kind: [shackle]
#     uses: {at_least: 1}
#   message: "{id} has a round pin, held by its cotter alone: take one with a screw pin, or a bolt with nut and cotter"
#   cite:
#     - {document: ASME B30.26, clause: round pins are outside of it, basis: memory, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.hardware.round_pin

finding contains item.key if {
	some item in input.gear
	item.pin_kind == "round"
}
