# METADATA
# title: Found unfit and not found fit since
# description: >-
#   An inspection, a look before use, a proof test or a repair did not pass it. It
#   stays out of service until it has been put right and somebody who is named has
#   passed it in an inspection that goes as far; after a proof test, in another.
# custom:
#   severity: error
#   over: on_file
#   where:
#     uses: {at_least: 1}
#   message: "{id} was found unfit by the {failed.named} of {failed.date}, and nobody who is named has found it fit since in one that goes as far: use another"
#   place: failed
#   waivable: false
#   cite:
#     - {document: 29 CFR 1926.251, clause: (a)(6), basis: read, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.inspection.found_unfit

finding contains item.key if {
	some item in input.on_file
	item.failed.what != "none"
}
