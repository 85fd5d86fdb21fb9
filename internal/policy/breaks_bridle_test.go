package policy_test

import "liftlint/internal/facts"

func breaksBridle() []broken {
	bridle := func(change func(*facts.Bridle)) func(*facts.Document) {
		return func(d *facts.Document) { change(&d.Bridles[0]) }
	}
	return []broken{
		{"bridle/intermediate_link_weak", "", bridle(func(b *facts.Bridle) { b.IntermediateRatio = ptr(1.5) }),
			"intermediate links of B1: IL1; the weakest is rated for <intermediate_over_leg_ratio 1.5> of the <one_leg_rated_n 36000> that follows from the tag for one leg, and at least <least_ratio 1.55> is asked for, which is 1.6 times less rounding", "#/gear/IL1", 1.5},
		{"bridle/master_link_weak", "", bridle(func(b *facts.Bridle) { b.MasterRatio = ptr(0.9) }),
			"the master link of B1 is rated for <master_over_assembly_ratio 0.9> of what the bridle is rated for; at least <least_ratio 1> is asked for", "#/gear/ML1", 0.9},
		{"bridle/lower_fitting_weak", "", bridle(func(b *facts.Bridle) { b.LowerFittingRatio = ptr(0.9) }),
			"at the lower ends of legs of B1: K1, K2; the weakest is rated for <lower_fitting_over_leg_ratio 0.9> of the <one_leg_rated_n 36000> that follows from the tag for one leg, and at least <least_ratio 0.97> is asked for", "#/gear/K1", 0.9},
		{"bridle/diagonal_pairs", "", bridle(func(b *facts.Bridle) { b.GroupedAs = ptr("diagonal") }),
			"the legs on one intermediate link of B1 go to opposite corners: put neighboring legs on one link", "#/bridle", 0},
		{"bridle/legs_unmatched", "", bridle(func(b *facts.Bridle) { b.LengthSpreadD = ptr(1.5) }),
			"the legs of B1 differ in length by <length_spread_d 1.5> (d is the diameter of their rope); matched legs differ by no more than <most_d 1>", "#/bridle", 1.5},
		{"bridle/legs_on_tag", "", bridle(func(b *facts.Bridle) { b.LegsOnTag = ptr(2) }),
			"the tag of B1 names <legs_on_tag 2> legs, and the bridle has <legs 4>: find out which bridle it is", "#/bridle", 0},
	}
}
