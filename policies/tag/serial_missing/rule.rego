# METADATA
# title: No serial number on a tag
# description: >-
#   A sling of chain, webbing or mesh can be used by what its tag has to show. A
#   serial number besides makes sure that register, certificate and inspection report
#   speak of this one.
# custom:
#   severity: note
#   over: gear
#   where:
#     kind: [chain_sling, web_sling, round_sling, mesh_sling]
#     uses: {at_least: 1}
#     tag.state: [legible]
#   params:
#     kinds: [chain_sling, web_sling, mesh_sling]
#   message: "the tag of {id} shows no serial number, which would tie it to its certificate and its inspections"
#   place: tag
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.tag.serial_missing

import data.params.tag.serial_missing as p

finding contains item.key if {
	some item in input.gear
	item.kind in p.kinds
	not "serial" in item.tag.shows
}
