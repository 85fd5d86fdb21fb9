# METADATA
# title: Part does not go into what it hangs in
# description: >-
#   What is hung in a link, between the ears of a shackle, in its bow or in a
#   socket has to go in freely. A part that is forced in jams when the leg turns.
# custom:
#   severity: error
#   over: fits
#   where: {what: [link_in_bow, part_in_link, body_in_socket, eye_in_jaw, eye_in_opening]}
#   measured: needs_m
#   limit: room_m
#   message: "{inner} takes up {measured}; {outer} is {limit} wide"
#   remedy: wider_opening
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.part_in_opening

finding contains fit.key if {
	some fit in input.fits
	fit.needs_m > fit.room_m
}
