# METADATA
# title: Legs crowded
# description: >-
#   Legs that do not lie side by side ride up on one another: the one on top
#   crushes the one below, and the link is pulled at its side.
# custom:
#   severity: error
#   over: gathers
#   measured: needs_m
#   limit: room_m
#   message: "{bearers} on {name} take {measured} side by side; there is room for {limit}"
#   remedy: wider_collector
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.crowded

finding contains gather.key if {
	some gather in input.gathers
	gather.needs_m > gather.room_m
}
