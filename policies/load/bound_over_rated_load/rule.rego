# METADATA
# title: Could come over the rated load
# description: >-
#   On four legs and more the load can come onto two of them: a few millimeters
#   of length decide. This looks at the most that each part can be made to
#   carry, for parts that carry no more than they may with lengths as given.
# custom:
#   severity: warning
#   over: parts
#   where:
#     split: [settled_by_stiffness]
#     used_ratio: {at_most: 1}
#   measured: load_bound_n
#   limit: rated_load_n
#   message: "{id} in {where} can be made to carry {measured} by small differences of length; it is rated for {limit}"
#   cite:
#     - {document: NAVEDTRA 14251, clause: two legs taken to carry a rigid load, basis: read}
#     - {document: common practice, basis: practice}
package liftlint.rules.load.bound_over_rated_load

finding contains part.key if {
	some part in input.parts
	part.load_bound_n > part.rated_load_n
}
