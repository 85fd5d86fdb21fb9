package compute_test

import "liftlint/internal/facts"

// arrangedConcernsNot lists the optional fields of how a lift is arranged that do
// not concern a record: what depends on phases, on the hitch, on a beam's own
// ratings.
func arrangedConcernsNot(r facts.View, field string) bool {
	switch field {
	case "loads.phase", "hooks.phase", "hooks.lean_phase", "beams.phase", "legs.tension_phase", "legs.flattest_phase", "legs.slack_phase",
		"legs.level_length_m":
		return true
	case "gear.outside_range_m":
		return !in(r, "kind", "turnbuckle")
	case "legs.length_needed_m":
		return in(r, "length_open", false)
	case "parts.hitch_ratio": // whether a sling is laid double is not in the record
		return !in(r, "kind", "wire_rope_sling") || in(r, "hitch", "straight")
	case "beams.compression_over_rated_ratio":
		return in(r, "compression_rated", false)
	case "beams.bending_over_rated_ratio":
		return in(r, "bending_rated", false)
	case "beams.least_top_angle_from_horizontal_deg", "beams.top_angle_too_flat_deg":
		return in(r, "least_top_angle_given", false)
	case "hitches.perimeter_d", "hitches.choke_angle_deg", "hitches.choke_lands":
		return !in(r, "kind", "choke")
	case "hitches.force_ratio":
		return !in(r, "kind", "basket")
	case "hitches.friction_holds_ratio", "hitches.slips_ratio", "hitches.friction_needed_over_given_ratio":
		return !in(r, "kind", "basket") || in(r, "on", "point")
	case "hitches.lean_along_body_deg", "hitches.body_length_m":
		return in(r, "on", "point", "sheave")
	case "positions.tension_n", "positions.angle_from_horizontal_deg":
		return in(r, "released", true)
	}
	return false
}
