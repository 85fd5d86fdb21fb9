# METADATA
# title: Hook does not go into the hole
# description: >-
#   A hook hangs in an attachment by its bowl. Where its section does not go
#   through the hole, it is hung by its tip, which is not made to carry.
# custom:
#   severity: error
#   over: fits
#   where: {what: [hook_in_hole]}
#   measured: needs_m
#   limit: room_m
#   message: "hook {inner} is {measured} thick at its bowl; {outer} is {limit} wide"
#   remedy: wider_hole
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.hook_in_hole

finding contains fit.key if {
	some fit in input.fits
	fit.needs_m > fit.room_m
}
