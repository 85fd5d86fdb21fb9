# METADATA
# title: Closed eye in a closed eye
# description: >-
#   The eye of a swivel, a load cell, a turnbuckle or an adjuster is closed, and so are
#   the eye of a sling, a link, the eye of a hook, an endless sling, the hole of a plate
#   and a ring on the load: neither goes into the other. A shackle joins them, which has a
#   length, a rating and a fit of its own; or the part has a jaw at that end, of which the
#   plan gives the pin.
# custom:
#   severity: error
#   over: fits
#   message: "{inner} and {outer} are both closed, and neither goes into the other: write the shackle that joins them, or the pin of the part in line if that end is a jaw"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.route.closed_in_closed

finding contains fit.key if {
	some fit in input.fits
	fit.both_closed == true
}
