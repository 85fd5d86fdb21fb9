package compute_test

import "liftlint/internal/facts"

// slingKinds are the kinds of slings.
var slingKinds = []any{"wire_rope_sling", "grommet", "chain_sling", "web_sling", "round_sling", "mesh_sling"}

// arrangedConcernsNot lists the optional fields of how a lift is arranged that do
// not concern a record: what depends on phases, on the hitch, on a beam's own
// ratings.
func arrangedConcernsNot(r facts.View, field string) bool {
	switch field {
	case "loads.phase", "hooks.phase", "hooks.lean_phase", "beams.phase", "legs.tension_phase", "legs.flattest_phase", "legs.slack_phase",
		"legs.judged_phase", "parts.phase", "attachments.phase", "hitches.phase", "hitches.lean_phase",
		"legs.level_length_m":
		return true
	case "gear.outside_range_m":
		return !in(r, "kind", "turnbuckle", "adjuster")
	case "hooks.height_off_m":
		return in(r, "height_given", false)
	case "hitches.splice_lies":
		return !in(r, "kind", "basket")
	case "legs.length_needed_m":
		return in(r, "length_open", false)
	case "parts.hitch_ratio": // whether a sling is laid double is not in the record
		return !in(r, "kind", slingKinds...) || in(r, "hitch", "straight")
	case "beams.compression_over_rated_ratio":
		return in(r, "compression_rated", false)
	case "beams.bending_over_rated_ratio":
		return in(r, "bending_rated", false)
	case "beams.least_top_angle_from_horizontal_deg", "beams.top_angle_too_flat_deg":
		return in(r, "least_top_angle_given", false)
	case "hitches.perimeter_d", "hitches.choke_angle_deg", "hitches.choke_lands":
		return !in(r, "kind", "choke")
	case "hitches.edge_radius_m", "hitches.edge_sharp":
		return !in(r, "on", "body_with_corners")
	case "beams.proof_test_date", "beams.proof_test_after_lift":
		return in(r, "proof_test_dated", false)
	case "beams.proof_test_ratio":
		return in(r, "proof_test_given", false)
	case "beams.span_over_rated_ratio":
		return in(r, "span_rated_for_given", false)
	case "grommets.splice_from_bearing_d":
		return in(r, "splice_given", false) || in(r, "hitch", "choke")
	case "grommets.lower_bend_d":
		return !in(r, "hitch", "straight")
	case "hitches.force_ratio":
		return !in(r, "kind", "basket")
	case "hitches.friction_holds_ratio", "hitches.slips_ratio", "hitches.friction_needed_over_given_ratio":
		return !in(r, "kind", "basket") || in(r, "on", "point")
	case "hitches.lean_along_body_deg", "hitches.body_length_m":
		return in(r, "on", "point", "sheave")
	case "factors.angle_deg":
		return !in(r, "what", "choke_angle", "shackle_pull", "eyebolt_angle", "tag_angle")
	case "factors.body_over_size_ratio":
		return !in(r, "what", "bend", "edge")
	case "factors.parts":
		return !in(r, "what", "parts")
	case "factors.temperature_c":
		return !in(r, "what", "temperature")
	case "positions.tension_n", "positions.angle_from_horizontal_deg":
		return in(r, "released", true)
	}
	return false
}
