# METADATA
# title: Legs above a beam too flat
# description: >-
#   The flatter the legs above a spreader, the more compression they put into it. Its
#   rated load holds down to the angle that its document names.
# custom:
#   severity: error
#   over: beams
#   where:
#     least_top_angle_given: [true]
#   measured: top_angle_from_horizontal_deg
#   limit: least_top_angle_from_horizontal_deg
#   message: "the flattest leg above {id} hangs at {measured} from horizontal, and its rating holds down to {limit}: take longer legs above it"
#   waivable: false
#   cite:
#     - {document: common practice, clause: the beam's own document, basis: practice}
package liftlint.rules.beam.top_legs_too_flat

finding contains beam.key if {
	some beam in input.beams
	beam.top_angle_from_horizontal_deg < beam.least_top_angle_from_horizontal_deg
}
