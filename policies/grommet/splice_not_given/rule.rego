# METADATA
# title: Not said where a grommet's splice is
# description: >-
#   The tuck or sleeve of a grommet is kept clear of hooks, pins and bends. Where the
#   plan does not say where it is, nobody can see from the plan that it is.
# custom:
#   severity: note
#   over: grommets
#   message: "the plan does not say where the splice of {id} is, which has to be clear of hooks, pins and bends: add `splice_at`"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.grommet.splice_not_given

finding contains grommet.key if {
	some grommet in input.grommets
	grommet.splice_given == false
}
