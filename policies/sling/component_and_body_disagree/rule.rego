# METADATA
# title: Body and rope of a sling disagree
# description: >-
#   How thick a braided body is follows from the rope it is made of and from the
#   number of parts; a cable-laid one, six ropes round one, is three ropes thick. Where
#   the two do not go together one of them is misread, and with it what bends, fits and
#   rating are worked out from.
# custom:
#   over: ropes
#   where:
#     body: [multi_part, cable_laid]
#   grades:
#     - name: cable_laid
#       title: Body and rope of a cable-laid sling disagree
#       severity: error
#       message: "{id} can't be {diameter_m} thick, cable-laid of rope of {component_diameter_m}: six ropes round one are three ropes thick; measure both"
#     - name: disagree
#       title: Body and rope of a multi-part sling disagree
#       severity: error
#     - name: not_known
#       title: Body of a multi-part sling not checked against its rope
#       severity: note
#       message: "no lay-up of so many parts is known here: see that {diameter_m} of body and {component_diameter_m} of rope go together in {id}"
#   message: "{id} can't be {diameter_m} thick with rope of {component_diameter_m} in as many parts: measure both"
#   cite:
#     - {document: common practice, clause: "body of 3.0 and 3.6 times the rope with 7 and 9 parts, by geometry", basis: practice}
#     - {document: EN 13414-3, clause: for six ropes round one in a cable-laid body, basis: memory, grades: [cable_laid]}
package liftlint.rules.sling.component_and_body_disagree

finding contains {"key": rope.key, "grade": "cable_laid"} if {
	some rope in input.ropes
	rope.body == "cable_laid"
	rope.body_over_components_agrees == "no"
}

finding contains {"key": rope.key, "grade": "disagree"} if {
	some rope in input.ropes
	rope.body_over_components_agrees == "no"
}

finding contains {"key": rope.key, "grade": "not_known"} if {
	some rope in input.ropes
	rope.body_over_components_agrees == "lay_up_not_known"
}
