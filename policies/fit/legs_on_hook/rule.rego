# METADATA
# title: Too many legs straight on the hook
# description: >-
#   More than two legs crowd the bowl of a hook and load its sides. They are
#   gathered in a link, and the link goes over the hook.
# custom:
#   severity: error
#   over: hooks
#   measured: legs_direct
#   limit: most
#   params:
#     most: {default: 2, at_least: 1, at_most: 4}
#   message: "{measured} legs go over the hook itself; with more than {limit} a link gathers them"
#   cite:
#     - {document: ASME B30.10, clause: 10-1.11.1, basis: memory, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.legs_on_hook

import data.params.fit.legs_on_hook as p

finding contains hook.key if {
	some hook in input.hooks
	hook.legs_direct > p.most
}
