# METADATA
# title: Category of a beam not given
# description: >-
#   How strong a beam is built and how often it may be loaded is told by the category
#   of its design and its service class, which are marked on it. One whose category
#   nobody knows may be built for other work.
# custom:
#   severity: {draft: note, review: warning, prelift: warning}
#   over: beams
#   message: "the plan does not give the category of {id} as marked on it: add `category`"
#   cite:
#     - {document: ASME B30.20, clause: "category and service class, as marked", basis: memory, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.beam.category_missing

finding contains beam.key if {
	some beam in input.beams
	beam.category_given == false
}
