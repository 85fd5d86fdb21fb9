# METADATA
# title: Body and rope of a cable-laid grommet disagree
# description: >-
#   A cable-laid grommet is six turns of one rope round a seventh, and three ropes
#   thick. Where body and rope do not go together one of them is misread, and with it
#   what bends, circumference and rating are worked out from.
# custom:
#   severity: error
#   over: grommets
#   where: {laid: [cable_laid]}
#   message: "{id} can't be {diameter_m} thick, cable-laid of rope of {component_diameter_m}: six ropes round one are three ropes thick; measure both"
#   cite:
#     - {document: EN 13414-3, clause: for six ropes round one, basis: memory}
#     - {document: common practice, clause: "body of three times the rope, by geometry", basis: practice}
package liftlint.rules.grommet.component_and_body_disagree

finding contains grommet.key if {
	some grommet in input.grommets
	grommet.body_over_components_agrees == "no"
}
