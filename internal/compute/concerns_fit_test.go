package compute_test

import (
	"strings"

	"liftlint/internal/facts"
)

// fitConcernsNot lists the optional fields of fits, gathers and uses of hooks
// that do not concern a record.
func fitConcernsNot(r facts.View, field string) bool {
	what, _ := r.Field("what")
	kind, _ := what.(string)
	eye := strings.HasPrefix(kind, "eye_over_")
	switch field {
	case "fits.eye_width_m":
		return !eye || in(r, "thimble", false)
	case "fits.thimble_over_rope_ratio":
		return in(r, "thimble_size_given", false)
	case "fits.rope_diameter_m", "fits.eye_length_m", "fits.body_width_m", "fits.width_over_length_ratio", "fits.eye_included_angle_deg", "fits.bend_d":
		return !eye
	case "fits.room_m", "fits.needs_m", "fits.filled_ratio":
		return eye
	case "fits.pin_over_hole_ratio":
		return kind != "bow_in_hole"
	case "bearings.eye_length_m", "bearings.eye_length_over_body_times":
		return in(r, "eye_matters", false)
	case "gathers.pattern":
		return !in(r, "what", "bow", "pin", "shackle")
	case "gathers.on_pin":
		return kind == "hook" || kind == "link"
	case "hook_uses.points":
		return in(r, "of", "crane")
	case "hook_uses.off_axis_deg":
		return in(r, "legs_direct", 0)
	}
	return false
}
