package policy_test

import "liftlint/internal/facts"

func breaksTag() []broken {
	return []broken{
		{"tag/design_factor_low", "", func(d *facts.Document) { d.Gear[0].Tag.DesignFactor = ptr(4.0) },
			"the tag of S1 rests on a design factor of <tag.design_factor 4>; at least <least 5> is asked for", "#/tag", 4},
		{"tag/diameter_disagrees", "", func(d *facts.Document) { d.Gear[0].Tag.Diameter = ptr("differs") },
			"the tag of S1 names another diameter than the sling has in the plan: find out which sling it is", "#/tag", 0},
		{"tag/missing_or_incomplete", "missing", func(d *facts.Document) { d.Gear[0].Tag.State = "missing" },
			"sling S1 has no tag: it stays out of service until a qualified person has identified, inspected and re-tagged it", "#/tag", 0},
		{"tag/missing_or_incomplete", "illegible", func(d *facts.Document) { d.Gear[0].Tag.State = "illegible" },
			"the tag of sling S1 can't be read: it stays out of service until a qualified person has identified, inspected and re-tagged it", "#/tag", 0},
		{"tag/missing_or_incomplete", "not_recorded", func(d *facts.Document) { d.Gear[0].Tag.State = "not_recorded" },
			"the plan says nothing of a tag on sling S1: write down what it shows", "#/tag", 0},
		{"tag/missing_or_incomplete", "incomplete", func(d *facts.Document) { d.Gear[0].Tag.Shows = []string{"diameter", "hitch", "angle_from_horizontal"} },
			"the tag of sling S1 does not show: maker, rated load", "#/tag", 0},
		{"tag/useful_fields_missing", "", func(d *facts.Document) {
			d.Gear[0].Tag.Shows = []string{"maker", "diameter", "rated_load", "hitch", "angle_from_horizontal", "legs"}
		},
			"the tag of sling S1 does not show, though it would be useful: serial, design factor", "#/tag", 0},
	}
}
