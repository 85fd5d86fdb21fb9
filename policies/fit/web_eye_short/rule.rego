# METADATA
# title: Eye of webbing too short for what it goes over
# description: >-
#   The sides of an eye that is short for its hook stand apart and tear the stitching
#   open at its end. An eye is at least three and a half times as long as the hook in it
#   is thick; its sides then stand 20 degrees apart.
# custom:
#   over: bearings
#   where: {eye_matters: [true]}
#   measured: eye_length_over_body_times
#   params:
#     error_times: {default: 2, at_least: 2, at_most: 3.5}
#     warning_times: {default: 3.5, at_least: 2, at_most: 6}
#   grades:
#     - name: far_too_short
#       severity: error
#       limit: error_times
#     - name: short
#       severity: warning
#       limit: warning_times
#   message: "the eye of {id} is {eye_length_m} long, {measured} the thickness of {on}, which is {body_width_m}; at least {limit} keeps its stitching from being torn open: hang it on something thinner, or from a shackle"
#   cite:
#     - {document: EN 1492-1, clause: for 3.5 times the thickness of the hook, basis: memory}
#     - {document: common practice, basis: practice}
package liftlint.rules.fit.web_eye_short

import data.params.fit.web_eye_short as p

finding contains {"key": bearing.key, "grade": "far_too_short"} if {
	some bearing in input.bearings
	bearing.eye_length_over_body_times < p.error_times
}

finding contains {"key": bearing.key, "grade": "short"} if {
	some bearing in input.bearings
	bearing.eye_length_over_body_times < p.warning_times
}
