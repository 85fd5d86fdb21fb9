package policy_test

import (
	"fmt"

	"liftlint/internal/facts"
)

// The hitches of a level lift by what they are there for.
const (
	chokeAlone = iota // on a short pole of wood
	chokeOfTwo        // with nothing said of how it is set
	basketLevel
	basketTilted // against a stop
	basketOnEdges
	basketThroughPoint
	overSheave
)

// hitchesLevel gives a level lift slings in each hitch, one leg that is alone and a
// spreader, which meet every rule.
func hitchesLevel(d *facts.Document) {
	d.Hitches = make([]facts.Hitch, overSheave+1)
	for i := range d.Hitches {
		d.Hitches[i] = facts.Hitch{
			Record: facts.Record{Key: fmt.Sprintf("hitch/%d", i), At: fmt.Sprintf("#/hitch/%d", i)}, ID: "hook/1", Sling: "S1",
			Kind: "basket", Round: "pipe", On: "round_body", Turns: 1, BodyWidthM: ptr(0.6), BodyOverRopeRatio: ptr(30.0), BentOverM: ptr(0.6), SizeM: ptr(0.02),
			ForceRatio: ptr(1.0), SpliceLies: ptr("free"), HoldsRatio: ptr(1.6), SlipsRatio: ptr(0.625), LeanDeg: ptr(3.0), FrictionNeededRatio: ptr(0.35),
			Surface: "dry_steel", PinIn: "none", LegsOnLoad: 2, BodyLengthM: ptr(6.0),
		}
	}
	for i, legs := range map[int]int{chokeAlone: 1, chokeOfTwo: 2} {
		h := &d.Hitches[i]
		h.Kind, h.Surface, h.LegsOnLoad, h.BodyLengthM = "choke", "wood", legs, ptr(3.0)
		h.PerimeterD, h.ChokeAngleDeg, h.ChokeLands, h.PinIn = ptr(94.0), ptr(134.0), ptr("on_rope"), "eye"
		h.ForceRatio, h.HoldsRatio, h.SlipsRatio, h.FrictionNeededRatio, h.SpliceLies = nil, nil, nil, nil, nil
	}
	d.Hitches[basketTilted].LoadTilts, d.Hitches[basketTilted].HeldAgainstSliding = true, true
	h := &d.Hitches[basketOnEdges]
	h.On, h.BodyOverRopeRatio, h.HeldAgainstSliding, h.EdgeRadiusM = "body_with_corners", ptr(3.0), true, ptr(0.03)
	h = &d.Hitches[basketThroughPoint]
	h.On, h.Round, h.Surface, h.BodyOverRopeRatio, h.LeanDeg, h.BodyLengthM = "point", "A", "none", ptr(1.5), nil, nil
	h.HoldsRatio, h.SlipsRatio, h.FrictionNeededRatio = nil, nil, nil
	h = &d.Hitches[overSheave]
	h.Kind, h.On, h.Round, h.Surface, h.BodyOverRopeRatio, h.LeanDeg, h.BodyLengthM = "over_sheave", "sheave", "BLK1", "none", ptr(20.0), nil, nil
	h.ForceRatio, h.HoldsRatio, h.SlipsRatio, h.FrictionNeededRatio, h.SpliceLies = nil, nil, nil, nil, nil
	d.Legs[0].Alone, d.Legs[0].TurningHeld = true, true
	for i := range d.Parts {
		d.Parts[i].Hitch = "straight"
	}
	for i, hitch := range []string{"choke", "basket"} {
		g := &d.Gear[i]
		g.Hitches, g.Tag.Shows = []string{hitch}, append(g.Tag.Shows, "choker_rated_load", "basket_rated_load")
	}
	d.Beams = beamsLevel()
}

// The beams of a level lift.
const (
	spreader = iota
	liftingBeam
)

func beamsLevel() []facts.Beam {
	spreader := facts.Beam{
		Record: facts.Record{Key: "beam/SB1", At: "#/beam/0"}, ID: "SB1", Kind: "spreader_beam", TiltDeg: ptr(0.5),
		CompressionN: ptr(9000.0), BendingNm: ptr(1500.0), CompressionRated: true, CompressionRatio: ptr(0.6), BendingRated: true, BendingRatio: ptr(0.7),
		TopLegs: 2, TopAngleDeg: ptr(60.0), LeastTopAngleGiven: true, LeastTopAngleDeg: ptr(45.0), TopAngleTooFlatDeg: ptr(0.0),
	}
	lifting := spreader
	lifting.Record, lifting.ID, lifting.Kind = facts.Record{Key: "beam/LB1", At: "#/beam/1"}, "LB1", "lifting_beam"
	return []facts.Beam{spreader, lifting}
}
