# METADATA
# title: Leg flatter than its tag allows
# description: >-
#   A bridle that is rated for a band of angles is rated for nothing beyond it,
#   however little it carries.
# custom:
#   severity: error
#   over: legs
#   where: {rated_by_band: [true]}
#   measured: angle_from_horizontal_deg
#   limit: band_least_from_horizontal_deg
#   message: "leg {id} hangs at {measured} from horizontal; its tag holds down to {limit}"
#   remedy: longer_leg
#   waivable: false
#   cite:
#     - {document: EN 13414-1, edition: "2003", clause: Table 4, basis: read}
package liftlint.rules.angle.flatter_than_tag

finding contains leg.key if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < leg.band_least_from_horizontal_deg
}
