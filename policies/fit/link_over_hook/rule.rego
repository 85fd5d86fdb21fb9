# METADATA
# title: Link or shackle does not go over the crane hook
# description: >-
#   What hangs from the crane has to go over its hook down into the bowl. A link
#   that is too narrow hangs on the hook's flanks, and one that is forced over
#   opens under load.
# custom:
#   severity: error
#   over: fits
#   where: {what: [link_over_hook]}
#   measured: needs_m
#   limit: room_m
#   message: "{outer} is {measured} wide; {inner} is {limit} wide inside"
#   remedy: wider_link
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.link_over_hook

finding contains fit.key if {
	some fit in input.fits
	fit.needs_m > fit.room_m
}
