package policy_test

import "liftlint/internal/facts"

func breaksTag() []broken {
	return []broken{
		{"tag/design_factor_low", "rope", func(d *facts.Document) { d.Gear[0].Tag.DesignFactor = ptr(4.0) },
			"the tag of S1 rests on a design factor of <tag.design_factor 4>; at least <least 5> is asked for", "#/tag", 4},
		{"tag/design_factor_low", "chain", func(d *facts.Document) {
			shows("chain_sling", "maker", "size")(d)
			d.Gear[0].OfChain, d.Gear[0].Tag.DesignFactor = true, ptr(3.0)
		},
			"the tag of S1 rests on a design factor of <tag.design_factor 3>; at least <least_chain 4> is asked for", "#/tag", 3},
		{"tag/design_factor_low", "fabric", func(d *facts.Document) { d.Gear[0].Kind, d.Gear[0].Tag.DesignFactor = "round_sling", ptr(4.0) },
			"the tag of S1 rests on a design factor of <tag.design_factor 4>; at least <least_fabric 5> is asked for", "#/tag", 4},
		{"tag/disagrees", "", func(d *facts.Document) { d.Gear[0].Tag.DisagreesIn = ptr("diameter") },
			"the tag of S1 names another diameter than is given of it: find out what it belongs to", "#/tag", 0},
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
			"nothing is on record of a tag on S1: write down what it shows", "#/tag", 0},
		{"tag/missing_or_incomplete", "incomplete", func(d *facts.Document) { d.Gear[0].Tag.Shows = []string{"diameter", "hitch", "angle_from_horizontal"} },
			"the tag of S1 does not show: maker, rated load", "#/tag", 0},
		{"tag/missing_or_incomplete", "incomplete", func(d *facts.Document) {
			d.Gear[0].Kind, d.Gear[0].Tag.Shows = "bridle", []string{"maker", "diameter", "angle_from_horizontal", "legs"}
		}, "the tag of S1 does not show: rated load, rated for", "#/tag", 0},
		{"tag/hitch_rating_missing", "straight", func(d *facts.Document) {
			d.Gear[0].Kind, d.Gear[0].Hitches, d.Gear[0].Tag.Shows = "mesh_sling", []string{"straight"}, []string{"maker", "choker_rated_load", "basket_rated_load"}
		},
			"S1 pulls straight, and its tag shows no rated load for that hitch: take a sling whose tag does, or give `rated_load` if it does", "#/tag", 0},
		{"tag/missing_or_incomplete", "incomplete", shows("chain_sling", "maker", "size", "length", "rated_load", "hitch"), "the tag of S1 does not show: grade", "#/tag", 0},
		{"tag/missing_or_incomplete", "incomplete", shows("web_sling", "maker", "rated_load", "hitch"), "the tag of S1 does not show: material", "#/tag", 0},
		{"tag/missing_or_incomplete", "incomplete", shows("round_sling", "maker", "material", "rated_load", "hitch"), "the tag of S1 does not show: serial", "#/tag", 0},
		{"tag/missing_or_incomplete", "incomplete", shows("mesh_sling", "maker", "basket_rated_load"), "the tag of S1 does not show: choker rated load", "#/tag", 0},
		{"tag/choker_rating_unusual", "far_over", func(d *facts.Document) { d.Gear[0].ChokerRatio = ptr(1.2) },
			"the tag of S1 rates a choke at <choker_over_vertical_ratio 1.2> of a straight pull; it takes strength from every sling, and over <error_ratio 1> is not possible: see that the tag is read right", "#/tag", 1.2},
		{"tag/choker_rating_unusual", "over", func(d *facts.Document) { d.Gear[0].ChokerRatio = ptr(0.9) },
			"the tag of S1 rates a choke at <choker_over_vertical_ratio 0.9> of a straight pull; 70 to 80 % are usual, and at most <warning_ratio 0.82> is believable: see that the tag is read right", "#/tag", 0.9},
		{"tag/choker_rating_unusual", "far_under", func(d *facts.Document) { d.Gear[0].ChokerRatio = ptr(0.3) },
			"the tag of S1 rates a choke at <choker_over_vertical_ratio 0.3> of a straight pull; 70 to 80 % are usual: either the choke is rated for too little or the straight pull for too much; see that both are read right", "#/tag", 0.3},
		{"tag/basket_rating_unusual", "far_over", func(d *facts.Document) { d.Gear[0].BasketRatio = ptr(2.4) },
			"the tag of S1 rates a basket at <basket_over_vertical_ratio 2.4> of a straight pull, and its two parts can't carry more than twice that: see that the tag is read right", "#/tag", 2.4},
		{"tag/basket_rating_unusual", "over", func(d *facts.Document) { d.Gear[0].BasketRatio = ptr(2.1) },
			"the tag of S1 rates a basket at <basket_over_vertical_ratio 2.1> of a straight pull, and its two parts can't carry more than twice that: see that the tag is read right", "#/tag", 2.1},
		{"tag/rating_over_rope", "grommet_far_over", func(d *facts.Document) { d.Gear[0].Kind, d.Gear[0].RatedRatio = "grommet", ptr(2.0) },
			"the tag of S1 rates it at <rated_over_believable_ratio 2> of what its breaking load allows; at most <error_ratio 1.1> is believable: see whether that load is for one of its parts or for both", "#/tag", 2},
		{"tag/rating_over_rope", "far_over", func(d *facts.Document) { d.Gear[0].RatedRatio = ptr(1.2) },
			"the tag of S1 rates one leg at <rated_over_believable_ratio 1.2> of what such a sling can be rated for; at most <error_ratio 1.1> is believable: find out which sling or which tag it is", "#/tag", 1.2},
		{"tag/rating_over_rope", "over", func(d *facts.Document) { d.Gear[0].RatedRatio = ptr(1.05) },
			"the tag of S1 rates one leg at <rated_over_believable_ratio 1.05> of what such a sling can be rated for; at most <warning_ratio 1.03> is believable: find out which sling or which tag it is", "#/tag", 1.05},
		{"tag/rating_over_rope", "far_under", func(d *facts.Document) { d.Gear[0].RatedRatio = ptr(0.4) },
			"the tag of S1 rates one leg at <rated_over_believable_ratio 0.4> of what such a sling is usually rated for: see whether sling and tag are read right", "#/tag", 0.4},
		{"tag/rating_over_strongest_rope", "far_over", ratedOverStrongest(1.2),
			"the tag of S1 rates one leg at <rated_over_strongest_ratio 1.2> of what the strongest rope or chain as thick can be rated for; at most <error_ratio 1.1> is believable: find out which sling or which tag it is", "#/tag", 1.2},
		{"tag/rating_over_strongest_rope", "over", ratedOverStrongest(1.05),
			"the tag of S1 rates one leg at <rated_over_strongest_ratio 1.05> of what the strongest rope or chain as thick can be rated for; at most <warning_ratio 1.03> is believable: find out which sling or which tag it is", "#/tag", 1.05},
		{"tag/rating_over_section", "", func(d *facts.Document) { d.Gear[0].RatedOverSection = ptr(3.2) },
			"S1 is rated for <rated_over_section_ratio 3.2> of the most that its bow could ever be rated for: read its rated load, its unit and its sizes again", "#/tag", 3.2},
		{"tag/serial_missing", "", shows("web_sling", "maker", "material", "rated_load", "hitch"),
			"the tag of S1 shows no serial number, which would tie it to its certificate and its inspections", "#/tag", 0},
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

// shows makes the first sling one of another kind whose tag shows these fields.
func shows(kind string, fields ...string) func(*facts.Document) {
	return func(d *facts.Document) { d.Gear[0].Kind, d.Gear[0].Tag.Shows = kind, fields }
}
