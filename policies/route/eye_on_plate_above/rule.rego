# METADATA
# title: Sling straight in the plate of a beam
# description: >-
#   A closed eye does not go through the hole of a plate, and no sling takes the
#   bend round its edge. A shackle has to stand between, and it has a rating and a
#   fit of its own to be checked. This is of upper ends, the far end of a basket
#   among them.
# custom:
#   severity: error
#   over: legs
#   message: "leg {id} hangs by its sling straight in a plate of the beam: put the shackle that joins them into the leg, or below the point in `by`"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.route.eye_on_plate_above

finding contains leg.key if {
	some leg in input.legs
	leg.eyes_on_plates_above > 0
}
