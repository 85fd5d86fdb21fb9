package policy_test

import "liftlint/internal/facts"

// loadLevel gives a level lift a load that is free, empty and on nearly plumb
// legs, a leg of each rating, and an attachment of each kind that meet every
// rule.
func loadLevel(d *facts.Document) {
	l := &d.Loads[0]
	l.Freed, l.Contents, l.Hazard = true, "none", "none"
	l.SizeGiven, l.CenterOutsideM = true, ptr(0.0)
	l.ThrustN, l.FlattestLegDeg = ptr(1200.0), ptr(87.0)
	l.HangsAtWorst, l.WorstCorner = ptr("steady"), ptr("+x +y -z")
	for i := range d.Parts {
		d.Parts[i].MarkedLoadN = ptr(50000.0)
	}
	leg := &d.Legs[0]
	leg.AngleStated, leg.StatedAngleDeg, leg.StatedAngleOffDeg = true, ptr(64.0), ptr(1.0)
	leg.RatedByBand, leg.BandLeastDeg = true, ptr(45.0)
	leg.TagNamesAngle, leg.TagAngleDeg, leg.SteelsNamed = true, ptr(60.0), 2
	attachmentsLevel(d)
	d.Gear = append(d.Gear, levelShackle(d.Gear[0]))
	severalHooks(d)
}

// The records of a level lift that hang from several hooks.
const (
	onSeveral  = 1 // of loads
	tailHook   = 1 // of hooks
	turnbuckle = 5 // of gear
)

// severalHooks adds a second load, on two hooks, and a turnbuckle.
func severalHooks(d *facts.Document) {
	load := d.Loads[0]
	load.Key, load.At, load.HangsFrom, load.Phases, load.PlumbOffsetM = "load/2", "#/load2", "several_hooks", 2, nil
	load.Phase, load.SwingM, load.HooksLeanDeg = ptr("turning at 30 deg"), ptr(0.05), ptr(1.0)
	d.Loads = append(d.Loads, load)
	d.Hooks = append(d.Hooks, facts.Hook{
		Record: facts.Record{Key: "hook/tail", At: "#/hook/1"}, ID: "tail", OfSeveral: true,
		LeanDeg: ptr(1.0), LeanNamed: "tail in phase turning at 30 deg", HorizontalN: ptr(900.0),
	})
	inspection := *d.Gear[0].Inspection
	d.Gear = append(d.Gear, facts.Gear{
		Record: facts.Record{Key: "gear/TB1", At: "#/gear/5"}, ID: "TB1", Kind: "turnbuckle", Uses: 1, RatedAgainst: "nothing",
		LengthM: ptr(0.9), OutsideRangeM: ptr(0.0), Inspection: &inspection,
	})
}

// levelShackle is a shackle that is inspected as a sling is.
func levelShackle(sling facts.Gear) facts.Gear {
	shackle, inspection := sling, *sling.Inspection
	shackle.Key, shackle.At, shackle.ID, shackle.Kind = "gear/K1", "#/gear/4", "K1", "shackle"
	shackle.EyeKinds, shackle.Tag, shackle.RatedAgainst, shackle.RatedRatio = nil, facts.Tag{}, "nothing", nil
	shackle.TagNamesMake, shackle.TagNamesDesignFactor = false, false
	shackle.PinKind, shackle.Inspection = ptr("bolt"), &inspection
	shackle.TemperatureGiven, shackle.LowestC, shackle.HighestC = true, ptr(-5.0), ptr(30.0)
	return shackle
}

// The attachments of a level lift by what they are there for.
const (
	ratedToHorizontal = iota // a padeye, with no side pull that it is rated for
	ratedToPlane             // a padeye
	eyebolt
	hoistRing
	insert
)

func attachmentsLevel(d *facts.Document) {
	for i := range d.Attachments {
		a := &d.Attachments[i]
		a.PullAngleFromHorizontalDeg, a.OutOfPlaneDeg = ptr(65.0), ptr(3.0)
	}
	a := &d.Attachments[ratedToHorizontal]
	a.RatedToHorizontalGiven, a.RatedToHorizontalDeg = true, ptr(45.0)
	a = &d.Attachments[ratedToPlane]
	a.RatedToPlaneGiven, a.RatedToPlaneDeg = true, ptr(10.0)
	a = &d.Attachments[eyebolt]
	a.Kind, a.Pattern, a.Seated, a.OffAxisDeg = "eyebolt", ptr("shouldered"), ptr("seated"), ptr(25.0)
	a = &d.Attachments[hoistRing]
	a.Kind, a.Seated, a.OffAxisDeg, a.RatedToAxisDeg, a.OutOfPlaneDeg = "hoist_ring", ptr("seated"), ptr(25.0), ptr(90.0), nil
	d.Attachments = append(d.Attachments, facts.Attachment{
		Record: facts.Record{Key: "attachment/5", At: "#/attachment/4"}, ID: "I1", Kind: "insert", Legs: 1,
		PullN: ptr(10000.0), PullAngleFromHorizontalDeg: ptr(65.0), Panel: ptr("other"), BreakingTimes: ptr(4.5), HardwareBreakingTimes: ptr(5.5),
		ConcreteStrengthPa: ptr(21e6), ConcreteNeededPa: ptr(15e6),
	})
}
