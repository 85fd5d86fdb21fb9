package compute_test

import (
	"slices"

	"liftlint/internal/facts"
)

// in reports whether a field of a record has one of the values.
func in(r facts.View, field string, values ...any) bool {
	v, ok := r.Field(field)
	return ok && slices.Contains(values, v)
}

// hangingConcernsNot lists the optional fields of loads, attachments, legs and
// parts that do not concern a record.
func hangingConcernsNot(r facts.View, field string) bool {
	switch field {
	case "loads.turned_deg", "loads.worst_corner", "legs.worst_corner":
		return true
	case "legs.bound_by":
		_, bounded := r.Field("tension_bound_n")
		return !bounded
	case "loads.center_outside_m":
		return in(r, "size_given", false)
	case "legs.tension_bound_n", "legs.tension_counted_n", "parts.load_bound_n":
		return in(r, "split", "settled_by_statics")
	case "legs.stated_angle_from_horizontal_deg", "legs.stated_angle_off_deg":
		return in(r, "angle_stated", false)
	case "legs.lays_joined":
		return in(r, "slings", 0, 1)
	case "legs.tag_angle_from_horizontal_deg":
		return in(r, "tag_names_angle", false)
	case "legs.band_least_from_horizontal_deg":
		return in(r, "rated_by_band", false)
	case "parts.pull_off_deg": // which shackles can turn is not in the record
		return !in(r, "kind", "eyebolt")
	case "attachments.rated_load_n":
		return in(r, "kind", "insert")
	case "attachments.pull_angle_from_horizontal_deg":
		return in(r, "legs", 0)
	case "attachments.rated_to_angle_from_horizontal_deg":
		return in(r, "rated_to_horizontal_given", false)
	case "attachments.rated_to_angle_from_plane_deg":
		return in(r, "rated_to_plane_given", false)
	case "attachments.out_of_plane_deg":
		return in(r, "legs", 0) || !in(r, "kind", "padeye", "eyebolt")
	case "attachments.off_axis_deg":
		return in(r, "legs", 0) || !in(r, "kind", "hoist_ring", "eyebolt")
	case "attachments.rated_to_angle_from_axis_deg":
		return !in(r, "kind", "hoist_ring")
	case "attachments.pattern":
		return !in(r, "kind", "eyebolt")
	case "attachments.seated":
		return !in(r, "kind", "hoist_ring", "eyebolt")
	case "attachments.panel", "attachments.concrete_strength_pa", "attachments.concrete_strength_needed_pa":
		return !in(r, "kind", "insert")
	case "attachments.breaking_over_pull_times", "attachments.hardware_breaking_over_pull_times":
		return in(r, "legs", 0) || !in(r, "kind", "insert")
	}
	return false
}
