# METADATA
# title: Legs gathered on a shackle's pin
# description: >-
#   Legs that share a pin slide along it and turn it as they swing; the ears then
#   carry unequal shares and a screwed pin can come out. Legs are gathered in the
#   bow.
# custom:
#   severity: error
#   over: gathers
#   where: {what: [bow, pin, shackle]}
#   message: "{legs} legs hang on the pin of {id}: turn it round, so that they hang in its bow"
#   cite:
#     - {document: ASME B30.26, clause: shackles, basis: memory, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.legs_on_pin

finding contains gather.key if {
	some gather in input.gathers
	gather.on_pin
}
