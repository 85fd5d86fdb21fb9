# METADATA
# title: Eye clipped or knotted
# description: >-
#   Clips work loose and have to be tightened again once they have carried, and a
#   knot bends the rope round itself, where it breaks first. Slings have spliced,
#   pressed or socketed ends.
# custom:
#   over: ropes
#   needs_from: prelift # before, sling/turn_back_eye notes that the eyes are not described
#   grades:
#     - name: knotted
#       title: Eye tied in a knot
#       severity: error
#       message: "an eye of {id} is tied in a knot: it is not used as a sling"
#     - name: clipped
#       title: Eye held by clips
#       severity: error
#   message: "an eye of {id} is held by clips, which are not for making slings: use one with spliced or pressed eyes"
#   waivable: false
#   cite:
#     - {document: 29 CFR 1926.251, clause: "(c)(4)(iii), for clips", basis: read, profiles: [us], grades: [clipped]}
#     - {document: 29 CFR 1926.251, clause: "(c)(4)(iii), for knots", basis: memory, profiles: [us], grades: [knotted]}
#     - {document: common practice, clause: for clips and knots, basis: practice}
package liftlint.rules.sling.eye_not_allowed

finding contains {"key": rope.key, "grade": "knotted"} if {
	some rope in input.ropes
	"knotted" in rope.eye_kinds
}

finding contains {"key": rope.key, "grade": "clipped"} if {
	some rope in input.ropes
	"clipped" in rope.eye_kinds
}
