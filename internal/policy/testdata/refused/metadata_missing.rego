package liftlint.rules.angle.bad

import data.params.angle.bad as p

finding contains leg.key if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < p.minimum_deg
}

# want 1:1: there is no METADATA above the package line: it holds title, description and, under custom, severity, over, message and cite
