package policy_test

import (
	"fmt"

	"liftlint/internal/facts"
)

// slingsLevel gives a level lift ropes and a bridle that meet every rule, with
// each kind of record that rules on slings pick out.
func slingsLevel(d *facts.Document) {
	for i := range d.Gear {
		g := &d.Gear[i]
		g.RatedAgainst, g.RatedRatio = "rope_like_it", ptr(0.98)
		d.Ropes = append(d.Ropes, facts.Rope{
			Record: facts.Record{Key: "rope/" + g.ID, At: fmt.Sprintf("#/rope/%d", i)}, ID: g.ID,
			Described: []string{"class", "construction", "core", "grade", "finish", "lay"}, DiameterM: ptr(0.02), Core: "iwrc",
			EyeKinds: []string{"flemish_sleeve"}, Sleeves: []string{"steel"}, SplicesGiven: true, ClearRopeD: ptr(120.0),
			TemperatureGiven: true, LowestC: ptr(-5.0), HighestC: ptr(30.0), LookedOver: true, MakeKnown: true,
		})
	}
	last := &d.Gear[len(d.Gear)-1]
	last.RatedAgainst, last.RatedRatio, last.RatedOverBestRatio = "strongest_rope", nil, ptr(0.7)
	d.Legs[0].Slings, d.Legs[0].LaysJoined = 2, ptr("alike")
	d.Bridles = []facts.Bridle{{
		Record: facts.Record{Key: "bridle/B1", At: "#/bridle"}, ID: "B1", Legs: 4, LegsUsed: 4, LegsOnTag: ptr(4), LegsOnTagGiven: true,
		RatedFor: ptr("assembly"), OneLegRatedN: ptr(36000.0), AssemblyRatedN: ptr(76000.0), MasterRatio: ptr(1.05),
		IntermediateLinks: 2, IntermediateRatio: ptr(1.7), LowerFittingRatio: ptr(1.2), LowerFittings: 4,
		Master: facts.OfGear{At: "#/gear/ML1", IDs: []string{"ML1"}}, WeakLinks: facts.OfGear{At: "#/gear/IL1", IDs: []string{"IL1"}},
		WeakFittings: facts.OfGear{At: "#/gear/K1", IDs: []string{"K1", "K2"}}, GroupedAs: ptr("adjacent"), LengthSpreadD: ptr(0.5),
	}}
}
