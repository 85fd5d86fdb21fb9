# METADATA
# title: Part could come over its rated load
# description: >-
#   On four legs and more the load can come onto two of them: a few millimeters
#   of length decide. This looks at the most that each part can be made to
#   carry, for parts that carry no more than they may with lengths as given. A
#   shackle that is pulled toward an end of its pin, and an eyebolt that is
#   pulled off its axis, may carry less than is marked on them.
# custom:
#   over: parts
#   where:
#     split: [settled_by_stiffness]
#     used_ratio: {at_most: 1}
#   measured: load_bound_n
#   limit: rated_load_n
#   grades:
#     - name: over_pulled_aside
#       severity: warning
#       message: "{id} in {where} can be made to carry {measured} by small differences of length; pulled aside as it is, it is rated for {limit}, and is marked {marked_load_n}"
#     - name: over_at_angle
#       severity: warning
#       message: "{id} in {where} can be made to carry {measured} by small differences of length; as it is used it is rated for {limit}. It is marked {marked_load_n}, of which {takes}"
#     - name: over
#       severity: warning
#   message: "{id} in {where} can be made to carry {measured} by small differences of length; it is rated for {limit}"
#   cite:
#     - {document: NAVEDTRA 14251, clause: two legs taken to carry a rigid load, basis: read}
#     - {document: WAC 296-155-33905, clause: for shackles that are side-loaded, basis: read, grades: [over_pulled_aside]}
#     - {document: common practice, clause: "for eyebolts off their axis, choke angles, edges and heat", basis: practice, grades: [over_at_angle]}
package liftlint.rules.load.bound_over_rated_load

finding contains {"key": part.key, "grade": "over_pulled_aside"} if {
	some part in input.parts
	part.kind == "shackle"
	part.load_bound_n > part.rated_load_n
	part.rated_load_n < part.marked_load_n
}

finding contains {"key": part.key, "grade": "over_at_angle"} if {
	some part in input.parts
	part.load_bound_n > part.rated_load_n
	part.rated_load_n < part.marked_load_n
}

finding contains {"key": part.key, "grade": "over"} if {
	some part in input.parts
	part.load_bound_n > part.rated_load_n
}
