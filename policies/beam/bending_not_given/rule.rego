# METADATA
# title: Bending moment of a lifting beam not rated
# description: >-
#   A lifting beam carries by bending, and the moment in it hangs on where its
#   points and the load are. A rated load alone is for the arrangement that its
#   maker had in mind.
# custom:
#   severity: {draft: note, review: warning, prelift: warning}
#   over: beams
#   where:
#     kind: [lifting_beam]
#   measured: bending_nm
#   message: "the bending moment in {id} is {measured}, and the plan does not say what it is rated for: give `rated_bending_moment`"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.beam.bending_not_given

finding contains beam.key if {
	some beam in input.beams
	beam.bending_rated == false
	beam.bending_nm > 0
}
