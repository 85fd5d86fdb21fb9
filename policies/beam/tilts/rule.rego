# METADATA
# title: Beam hangs tilted
# description: >-
#   A spreader or lifting beam is rated as it hangs level. Tilted, what hangs from
#   it is pulled aside and the load is no longer shared as planned. Rocker plates
#   turn as they are made to.
# custom:
#   severity: warning
#   over: beams
#   where:
#     kind: [spreader_beam, lifting_beam]
#   measured: tilt_deg
#   limit: most_deg
#   params:
#     most_deg: {default: 2, at_least: 0, at_most: 15}
#   message: "{id} hangs {measured} out of level; at most {limit} is taken as level: even out the legs above it, or move its points over the center of gravity"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.beam.tilts

import data.params.beam.tilts as p

finding contains beam.key if {
	some beam in input.beams
	beam.tilt_deg > p.most_deg
}
