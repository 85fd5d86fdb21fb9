# METADATA
# title: A title
# description: A description.
# custom:
#   severity: error
#   over: legs
#   measured: angle_from_horizontal_deg
#   limit: minimum_deg
#   params: {minimum_deg: 30}
#   message: "leg {id} at {measured}, {limit}"
#   cite: [{document: common practice, basis: practice}]
package liftlint.rules.angle.bad

import data.params.angle.bad as p

finding contains leg.key if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < p.minimum_deg
	leg.tag.state == "missing"
}

# want 19:2: leg.tag.state: "tag" is no field of legs: there is alone, angle_from_horizontal_deg, angle_stated, at, band_least_from_horizontal_deg, bound_by, direction_in_plan_deg, doubled, ends_at, ends_in, eye_to_eye, eyes_on_plates_above, flattest_named, flattest_phase, from, hand_tucked, hitch, holds, id, judged_by, judged_phase, key, lays_joined, length_m, length_needed_m, length_open, level_length_m, margin_ratio, parts_taken_equal, pull_across_n, pull_along_n, pull_up_n, rated_by_band, runs, share_ratio, slack, slack_named, slack_phase, slings, split, stated_angle_from_horizontal_deg, stated_angle_off_deg, steels_mixed, steels_named, swivel_in_line, tag_angle_from_horizontal_deg, tag_names_angle, tension_at_worst_n, tension_bound_n, tension_counted_n, tension_judged_n, tension_n, tension_phase, thrust_n, to, turning_held, weakest_part, worst_corner
