# METADATA
# title: Spreader not rated for the legs above it
# description: >-
#   Inclined legs put compression into a spreader, the more the flatter they are. Its
#   rated load alone does not say how much of that it bears: its document names
#   the flattest angle of the legs above it, or the compression it is rated for.
# custom:
#   severity: {draft: note, review: warning, prelift: warning}
#   over: beams
#   where:
#     kind: [spreader_beam]
#   measured: top_angle_from_horizontal_deg
#   limit: plumb_deg
#   params:
#     plumb_deg: {default: 85, at_least: 45, at_most: 90}
#   message: "legs at {measured} from horizontal put {compression_n} of compression into {id}, and the plan does not say that it is rated for that, as it has to for legs flatter than {limit}: give `least_top_angle_from_horizontal` or `rated_compression`"
#   cite:
#     - {document: 29 CFR 1910.184, clause: "(b), for 5 degrees as vertical", basis: read, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.beam.top_angle_not_given

import data.params.beam.top_angle_not_given as p

finding contains beam.key if {
	some beam in input.beams
	beam.least_top_angle_given == false
	beam.compression_rated == false
	beam.top_angle_from_horizontal_deg < p.plumb_deg
}
