package compute_test

import (
	"slices"

	"liftlint/internal/facts"
)

// gearConcernsNot lists the optional fields of gear, ropes and bridles that do
// not concern a record.
func gearConcernsNot(r facts.View, field string) bool {
	switch field {
	case "gear.lowest_c", "gear.highest_c", "ropes.lowest_c", "ropes.highest_c":
		return in(r, "temperature_given", false)
	case "gear.pin_kind", "gear.pin_turned_by":
		return !in(r, "kind", "shackle")
	case "gear.diameter_m":
		return !in(r, "kind", "wire_rope_sling", "grommet", "chain_sling", "master_link", "intermediate_link", "hook")
	case "gear.length_m":
		return in(r, "kind", "bridle", "spreader_beam", "lifting_beam", "lifting_device", "rocker_plate")
	case "gear.tag.design_factor":
		return in(r, "tag_names_design_factor", false)
	case "gear.tag.disagrees_in":
		return in(r, "tag_names_make", false)
	case "gear.rated_over_believable_ratio":
		return !in(r, "rated_against", "rope_like_it")
	case "gear.rated_over_strongest_ratio":
		return !in(r, "rated_against", "strongest_rope")
	case "gear.section", "gear.rated_over_section_ratio":
		return in(r, "section_held", false)
	case "gear.breaking_over_strongest_ratio":
		return in(r, "breaking_load_given", false)
	case "gear.choker_over_vertical_ratio":
		return !shownOnTag(r, "choker_rated_load")
	case "gear.basket_over_vertical_ratio":
		return !shownOnTag(r, "basket_rated_load")
	case "ropes.component_diameter_m":
		return in(r, "body", "single_part")
	case "ropes.body_over_components_agrees":
		return in(r, "body", "single_part")
	case "grommets.body_over_components_agrees", "grommets.component_diameter_m":
		return !in(r, "laid", "cable_laid")
	case "bridles.legs_on_tag":
		return in(r, "legs_on_tag_given", false)
	case "bridles.intermediate_over_leg_ratio":
		return in(r, "intermediate_links", 0)
	case "bridles.lower_fitting_over_leg_ratio":
		return in(r, "lower_fittings", 0)
	case "bridles.length_spread_d":
		return in(r, "legs", 1)
	}
	return false
}

// shownOnTag reports whether the tag of a sling can be read and shows a field.
func shownOnTag(r facts.View, field string) bool {
	shows, _ := r.Field("tag.shows")
	return in(r, "tag.state", "legible") && in(r, "kind", slingKinds...) && slices.Contains(shows.([]string), field)
}
