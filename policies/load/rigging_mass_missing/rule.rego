# METADATA
# title: Mass of the rigging not given
# description: >-
#   The crane and the upper parts carry the rigging too. Items whose mass the
#   plan does not give count as nothing on the hook. Where a link carries all,
#   its load can't be judged without them, and they are asked for.
# custom:
#   severity: {draft: note, review: warning, prelift: warning}
#   over: hooks
#   where:
#     legs_direct: {at_least: 1}
#   measured: items_without_mass
#   message: "the plan gives no mass for {measured} of the slings and fittings; what is not given counts as nothing on the hook"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.load.rigging_mass_missing

finding contains hook.key if {
	some hook in input.hooks
	hook.items_without_mass > 0
}
