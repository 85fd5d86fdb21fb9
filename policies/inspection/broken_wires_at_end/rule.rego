# METADATA
# title: Broken wires at an end
# description: >-
#   Wires that break beside a sleeve, a socket or a splice break where the rope is
#   held and does not give. More than one there is looked at before the sling is
#   used.
# custom:
#   severity: warning
#   over: signs
#   where:
#     uses: {at_least: 1}
#     what: [broken_wires_at_fitting]
#   measured: count
#   limit: most
#   params:
#     most: {default: 1, at_least: 0, at_most: 5}
#   message: "{id} had {measured} {named} on {date}; with more than {limit} a qualified person looks at it before it is used"
#   cite:
#     - {document: university rigging course, basis: read}
package liftlint.rules.inspection.broken_wires_at_end

import data.params.inspection.broken_wires_at_end as p

finding contains sign.key if {
	some sign in input.signs
	sign.count > p.most
}
