# METADATA
# title: Useful fields missing on a tag
# description: >-
#   A sling or bridle of rope can be used by what its tag has to show. A serial number
#   besides makes sure that register, certificate and inspection report speak of
#   this one.
# custom:
#   severity: note
#   over: gear
#   where:
#     kind: [wire_rope_sling, grommet, bridle]
#     uses: {at_least: 1}
#     tag.state: [legible]
#   params:
#     useful: [serial]
#   message: "the tag of {id} does not show, though it would be useful: {names}"
#   place: tag
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.tag.useful_fields_missing

import data.params.tag.useful_fields_missing as p

finding contains {"key": item.key, "names": lacking} if {
	some item in input.gear
	not "size" in item.tag.shows # so a bridle of chain
	lacking := [field | some field in p.useful; not field in item.tag.shows]
	count(lacking) > 0
}
