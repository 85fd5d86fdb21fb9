package policy_test

import "liftlint/internal/facts"

// The records of a level lift that are of other kinds than single-part rope.
const (
	chokeSoftened = overSheave + 1 // of hitches
	braid         = 4              // of ropes
	chainSling    = 6              // of gear
)

// kindsLevel gives a level lift slings of other kinds, and what rules on all kinds
// look at in the records that are there.
func kindsLevel(d *facts.Document) {
	for i := range d.Hitches {
		d.Hitches[i].SlingKind, d.Hitches[i].SoftenerSecured = "wire_rope_sling", "none"
		d.Hitches[i].RopeClass, d.Hitches[i].RopeCore = "6x36", "iwrc"
	}
	softened := d.Hitches[basketOnEdges]
	softened.Record = facts.Record{Key: "hitch/softened", At: "#/hitch/softened"}
	softened.EdgesProtected, softened.SoftenerSecured = true, "yes"
	softened.Kind, softened.LegsOnLoad, softened.PerimeterD = "choke", 2, ptr(94.0)
	softened.ChokeAngleDeg, softened.ChokeAngleGiven, softened.ChokeLands, softened.PinIn = ptr(120.0), true, ptr("on_rope"), "eye"
	softened.ForceRatio, softened.HoldsRatio, softened.SlipsRatio, softened.FrictionNeededRatio = nil, nil, nil, nil
	d.Hitches = append(d.Hitches, softened)
	for i := range d.Ropes {
		d.Ropes[i].Body, d.Ropes[i].LeastClearRopeD = "single_part", ptr(20.0)
	}
	rope := d.Ropes[0]
	rope.Record, rope.ID = facts.Record{Key: "rope/M1", At: "#/rope/4"}, "M1"
	rope.Body, rope.ComponentM, rope.BodyAgrees = "multi_part", ptr(0.0065), ptr("yes")
	d.Ropes = append(d.Ropes, rope)
	for i := range d.Legs {
		d.Legs[i].SwivelInLine = "no"
	}
	gearLevel(d)
	for i := range d.Beams {
		b := &d.Beams[i]
		b.CategoryGiven, b.ProofTestGiven, b.ProofTestDated, b.ProofTestRatio = true, true, true, ptr(1.25)
		b.ProofTestDate, b.ProofTestAfter = ptr("2026-03-01"), ptr(false)
		b.SpanGiven, b.SpanM, b.SpanRatio = true, ptr(2.0), ptr(0.9)
	}
	d.Grommets = []facts.Grommet{{
		Record: facts.Record{Key: "grommet/G1", At: "#/grommet/0"}, ID: "G1", Laid: "cable_laid", Hitch: "straight", DiameterM: ptr(0.02), ComponentM: ptr(0.0065), BodyAgrees: ptr("yes"),
		CircumferenceD: ptr(250.0), SpliceGiven: true, SpliceFromD: ptr(60.0), Sleeve: "none",
		UpperOn: "the crane hook", UpperBendD: ptr(5.5), LowerOn: "K1's bow", LowerBendD: ptr(5.0),
	}}
}

// gearLevel looks over the slings, and adds one of chain.
func gearLevel(d *facts.Document) {
	for i := range d.Gear {
		d.Gear[i].ChainGrade, d.Gear[i].Mesh = "none", "none"
		d.Gear[i].ChainHeld, d.Gear[i].SteelAgainstChain = "none", "no_chain"
		d.Gear[i].Fabric, d.Gear[i].GrommetCore, d.Gear[i].GrommetSleeve, d.Gear[i].Steel = "none", "none", "none", "none"
		d.Gear[i].SectionHeld, d.Gear[i].Section, d.Gear[i].RatedOverSection = true, ptr("its bow"), ptr(0.4)
		d.Gear[i].BreakingLoadGiven, d.Gear[i].BreakingRatio = true, ptr(0.6)
		d.Gear[i].LookedOver = d.Gear[i].Kind == "wire_rope_sling"
	}
	d.Gear[4].PinTurnedBy = ptr("nothing")
	d.Gear[4].Steel, d.Gear[4].ChainHeld, d.Gear[4].SteelAgainstChain = "alloy", "80", "as_good"
	for i := range 2 {
		g := &d.Gear[i]
		g.TagNamesChoker, g.ChokerRatio, g.TagNamesBasket, g.BasketRatio = true, ptr(0.75), true, ptr(2.0)
	}
	chain, inspection := d.Gear[0], *d.Gear[0].Inspection
	chain.Record, chain.ID, chain.Kind, chain.ChainGrade, chain.Mesh = facts.Record{Key: "gear/C1", At: "#/gear/6"}, "C1", "chain_sling", "80", "none"
	chain.OfChain, chain.ChainHeld, chain.SteelAgainstChain = true, "none", "no_chain"
	chain.Inspection, chain.EyeKinds, chain.TagNamesMake = &inspection, nil, false
	chain.Tag.Shows = []string{"maker", "serial", "size", "grade", "length", "rated_load", "choker_rated_load", "basket_rated_load", "hitch"}
	chain.TemperatureGiven, chain.LowestC, chain.HighestC = true, ptr(-5.0), ptr(30.0)
	d.Gear = append(d.Gear, chain)
}
