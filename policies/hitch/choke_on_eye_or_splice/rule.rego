# METADATA
# title: Choke on eye, splice or end
# description: >-
#   A choke bites on plain rope. Where the loop is no longer than the eye with its
#   splice or sleeve, these lie in the choke and are bent and crushed. It happens
#   where the load is thin for its sling, or the eye long. Of webbing and mesh the
#   stitching and the handle are no more made for it.
# custom:
#   over: hitches
#   where:
#     kind: [choke]
#   params:
#     thin_d: {default: 22, at_least: 10, at_most: 60}
#   grades:
#     - name: flat_end
#       title: Choke on the end of a sling
#       severity: error
#       message: "an end of {sling}, its stitching or handle included, lies in its choke on {round}: take a longer sling, one with shorter ends, or a basket"
#     - name: body_thin
#       title: Body too thin for the choke
#       severity: error
#       measured: perimeter_d
#       limit: thin_d
#       message: "{round} is thin for {sling}, {measured} round (d is the diameter of the rope), and the choke lands on eye or splice; under {limit} take another turn round it, a thinner sling, or a basket"
#     - name: eye_long
#       severity: error
#   message: "the choke of {sling} on {round} lands on its own eye or splice: take a sling with a shorter eye, another turn round {round}, or a basket"
#   waivable: false
#   cite:
#     - {document: geometry of a loop, clause: for what lies in the choke, basis: practice}
#     - {document: common practice, clause: "for 22 diameters, from usual eyes and sleeves", basis: practice, grades: [body_thin]}
package liftlint.rules.hitch.choke_on_eye_or_splice

import data.params.hitch.choke_on_eye_or_splice as p

finding contains {"key": hitch.key, "grade": "flat_end"} if {
	some hitch in input.hitches
	hitch.choke_lands == "on_eye_or_splice"
	hitch.sling_kind in {"web_sling", "mesh_sling"}
}

finding contains {"key": hitch.key, "grade": "body_thin"} if {
	some hitch in input.hitches
	hitch.choke_lands == "on_eye_or_splice"
	hitch.sling_kind == "wire_rope_sling"
	hitch.perimeter_d < p.thin_d
}

finding contains {"key": hitch.key, "grade": "eye_long"} if {
	some hitch in input.hitches
	hitch.choke_lands == "on_eye_or_splice"
}
