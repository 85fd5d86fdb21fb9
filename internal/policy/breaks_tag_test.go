package policy_test

import "liftlint/internal/facts"

func breaksTag() []broken {
	return []broken{
		{"tag/design_factor_low", "", func(d *facts.Document) { d.Gear[0].Tag.DesignFactor = ptr(4.0) },
			"the tag of S1 rests on a design factor of <tag.design_factor 4>; at least <least 5> is asked for", "#/tag", 4},
		{"tag/diameter_disagrees", "", func(d *facts.Document) { d.Gear[0].Tag.Diameter = ptr("differs") },
			"the tag of S1 names another diameter than its rope has in the plan: find out what it belongs to", "#/tag", 0},
		{"tag/hitch_rating_missing", "choke", func(d *facts.Document) { d.Gear[0].Tag.Shows = []string{"maker", "diameter", "rated_load", "hitch"} },
			"S1 is choked, and its tag shows no rated load for that hitch: take a sling whose tag does, or give `choker_rated_load` if it does", "#/tag", 0},
		{"tag/hitch_rating_missing", "basket", func(d *facts.Document) {
			d.Gear[0].Hitches, d.Gear[0].Tag.Shows = []string{"basket"}, []string{"maker", "diameter", "rated_load", "hitch"}
		},
			"S1 lies in a basket, and its tag shows no rated load for that hitch: take a sling whose tag does, or give `basket_rated_load` if it does", "#/tag", 0},
		{"tag/missing_or_incomplete", "missing", func(d *facts.Document) { d.Gear[0].Tag.State = "missing" },
			"S1 has no tag: it stays out of service until a qualified person has identified, inspected and re-tagged it", "#/tag", 0},
		{"tag/missing_or_incomplete", "illegible", func(d *facts.Document) { d.Gear[0].Tag.State = "illegible" },
			"the tag of S1 can't be read: it stays out of service until a qualified person has identified, inspected and re-tagged it", "#/tag", 0},
		{"tag/missing_or_incomplete", "not_recorded", func(d *facts.Document) { d.Gear[0].Tag.State = "not_recorded" },
			"the plan says nothing of a tag on S1: write down what it shows", "#/tag", 0},
		{"tag/missing_or_incomplete", "incomplete", func(d *facts.Document) { d.Gear[0].Tag.Shows = []string{"diameter", "hitch", "angle_from_horizontal"} },
			"the tag of S1 does not show: maker, rated load", "#/tag", 0},
		{"tag/missing_or_incomplete", "incomplete", func(d *facts.Document) {
			d.Gear[0].Kind, d.Gear[0].Tag.Shows = "bridle", []string{"maker", "diameter", "angle_from_horizontal", "legs"}
		}, "the tag of S1 does not show: rated load, rated for", "#/tag", 0},
		{"tag/rating_over_rope", "far_over", func(d *facts.Document) { d.Gear[0].RatedRatio = ptr(1.2) },
			"the tag of S1 rates one leg at <rated_over_believable_ratio 1.2> of what such a sling can be rated for; at most <error_ratio 1.1> is believable: find out which rope or which tag it is", "#/tag", 1.2},
		{"tag/rating_over_rope", "over", func(d *facts.Document) { d.Gear[0].RatedRatio = ptr(1.05) },
			"the tag of S1 rates one leg at <rated_over_believable_ratio 1.05> of what such a sling can be rated for; at most <warning_ratio 1.03> is believable: find out which rope or which tag it is", "#/tag", 1.05},
		{"tag/rating_over_rope", "far_under", func(d *facts.Document) { d.Gear[0].RatedRatio = ptr(0.4) },
			"the tag of S1 rates one leg at <rated_over_believable_ratio 0.4> of what such a sling is usually rated for: see whether rope and tag are read right", "#/tag", 0.4},
		{"tag/rating_over_strongest_rope", "far_over", ratedOverStrongest(1.2),
			"the tag of S1 rates one leg at <rated_over_strongest_ratio 1.2> of what the strongest rope of its diameter can be rated for; at most <error_ratio 1.1> is believable: find out which rope or which tag it is", "#/tag", 1.2},
		{"tag/rating_over_strongest_rope", "over", ratedOverStrongest(1.05),
			"the tag of S1 rates one leg at <rated_over_strongest_ratio 1.05> of what the strongest rope of its diameter can be rated for; at most <warning_ratio 1.03> is believable: find out which rope or which tag it is", "#/tag", 1.05},
		{"tag/useful_fields_missing", "", func(d *facts.Document) {
			d.Gear[0].Tag.Shows = []string{"maker", "diameter", "rated_load", "hitch", "angle_from_horizontal", "legs"}
		},
			"the tag of S1 does not show, though it would be useful: serial", "#/tag", 0},
	}
}

func ratedOverStrongest(ratio float64) func(*facts.Document) {
	return func(d *facts.Document) {
		d.Gear[0].RatedAgainst, d.Gear[0].RatedRatio, d.Gear[0].RatedOverBestRatio = "strongest_rope", nil, ptr(ratio)
	}
}
