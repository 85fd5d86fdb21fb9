# METADATA
# title: Repaired and not proof-tested
# description: >-
#   A new weld, a new seam or a new fitting has carried nothing yet. What was repaired
#   is proof-tested before it goes back to work; the day of the repair still counts.
# custom:
#   over: on_file
#   where:
#     uses: {at_least: 1}
#     kind: [chain_sling, web_sling, mesh_sling, round_sling, wire_rope_sling, grommet, bridle, spreader_beam, lifting_beam, lifting_device, rocker_plate]
#   params:
#     by_law: [chain_sling, web_sling, mesh_sling, bridle]
#   grades:
#     - name: sling
#       severity: error
#     - name: other
#       severity: {draft: note, review: warning, prelift: error}
#   message: "{id} was repaired on {repair.date}, and no proof test with its rated load or more that it held, with the name of who did it, is on record since: have it tested before it is used"
#   place: repair
#   cite:
#     - {document: 29 CFR 1910.184, clause: "(e)(4) for chain, (g)(5) for mesh, (i)(8) for webbing", basis: memory, profiles: [us], grades: [sling]}
#     - {document: ASME B30.9, basis: memory, profiles: [us]}
#     - {document: common practice, basis: practice}
package liftlint.rules.inspection.repair_untested

import data.params.inspection.repair_untested as p

finding contains {"key": item.key, "grade": "sling"} if {
	some item in input.on_file
	item.repair.proof_tested == "no"
	item.kind in p.by_law
}

finding contains {"key": item.key, "grade": "other"} if {
	some item in input.on_file
	item.repair.proof_tested == "no"
	not item.kind in p.by_law
}
