# METADATA
# title: Leg flatter than the angle on its bridle's tag
# description: >-
#   A bridle is rated at the angle on its tag. Statics says what a flatter leg
#   carries, and its parts are judged by that; whether the bridle may be used so is
#   for its maker or a qualified person to say.
# custom:
#   severity: warning
#   over: legs
#   where: {tag_names_angle: [true]}
#   measured: angle_from_horizontal_deg
#   limit: tag_angle_from_horizontal_deg
#   message: "leg {id} hangs at {measured} from horizontal, flatter than the {limit} on the tag of its bridle: the maker or a qualified person has to allow that"
#   remedy: longer_leg
#   cite:
#     - {document: common practice, basis: practice}
package liftlint.rules.angle.flatter_than_tag_angle

finding contains leg.key if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < leg.tag_angle_from_horizontal_deg
}
