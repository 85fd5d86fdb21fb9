# METADATA
# title: Steps of turning too coarse
# description: >-
#   What hooks and slings carry as a load is turned up changes with its pitch, and
#   is looked at step by step. Between two steps that lie far apart nothing is
#   known: the worst may lie there.
# custom:
#   severity: warning
#   over: loads
#   measured: pitch_step_deg
#   limit: most_deg
#   params:
#     most_deg: {default: 15, at_least: 1, at_most: 90}
#   message: "between two positions of its phases the load is turned by {measured}, and nothing of what lies between was looked at; at most {limit} is taken: add a phase, or take smaller steps"
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.load.turned_in_leaps

import data.params.load.turned_in_leaps as p

finding contains load.key if {
	some load in input.loads
	load.pitch_step_deg > p.most_deg
}
