package compute

import (
	"math"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// grommets lists those in use, leg by leg.
func (w *work) grommets() {
	for i, leg := range w.hung.Legs {
		for n, u := range leg.Down {
			if g, ok := u.Item.(*gear.Grommet); ok {
				w.grommet(i, n, g)
			}
		}
	}
}

func (w *work) grommet(i, n int, g *gear.Grommet) {
	leg := w.hung.Legs[i]
	f := facts.Grommet{
		Record:      facts.Record{Key: "grommet/" + g.ID, At: at(g.Pointer)},
		ID:          g.ID,
		Laid:        orNotGiven(g.Laid),
		Doubled:     leg.Doubled,
		Hitch:       straight,
		DiameterM:   number(g.Diameter),
		SpliceGiven: g.SpliceAt != nil,
		Sleeve:      orNotGiven(g.Sleeve),
	}
	if g == lastOf(leg.Leg) {
		f.Hitch = hitchOf(leg.End.Kind)
	}
	if f.Laid == "cable_laid" {
		f.ComponentM = w.take(f.Key, g.Pointer, given(g.Component, g.Pointer, "component_diameter", g.ID+"'s component diameter", ""), "component_diameter_m")
		f.BodyAgrees = w.cableAgrees(f.Key, g.Pointer, g.ID, g.Diameter, g.Component)
	}
	length := given(g.Circumference, g.Pointer, "circumference", g.ID+"'s circumference", "")
	if g.Circumference == nil && leg.OpenM != nil { // open, so that what it needs is known
		length = measure{m: ptr(2 * *leg.OpenM), at: g.Pointer}
	}
	around := w.take(f.Key, g.Pointer, length, "circumference_d")
	if f.CircumferenceD = ratio(around, f.DiameterM); f.CircumferenceD != nil && f.SpliceGiven && f.Hitch != "choke" {
		f.SpliceFromD = ptr(fromBearing(float64(*g.SpliceAt), *around/bearings(f)) / *f.DiameterM)
	}
	w.grommetBends(leg.Leg, n, &f)
	missing := absent(f, "diameter_m", "circumference_d", "upper_bend_d")
	if f.Hitch == straight {
		missing = append(missing, absent(f, "lower_bend_d")...)
	}
	if f.SpliceGiven && f.Hitch != "choke" {
		w.out.Gaps.CopyTo(f.Key, "circumference_d", f.Key, "splice_from_bearing_d")
		missing = append(missing, absent(f, "splice_from_bearing_d")...)
	}
	if g.Diameter == nil {
		w.wait(f.Key, []facts.Input{input(g.Pointer, "diameter", g.ID+"'s diameter")}, missing...)
	}
	w.out.Document.Grommets = append(w.out.Document.Grommets, f)
}

// bearings is the number of places along a grommet where it bears: its two ends, or
// in a basket and laid double twice those.
func bearings(f facts.Grommet) float64 {
	if f.Doubled || f.Hitch == "basket" {
		return 4
	}
	return 2
}

// fromBearing is the distance along the body from a place to the nearest bearing,
// which follow each other at one distance from the upper one on.
func fromBearing(placeM, apartM float64) float64 {
	return math.Abs(math.Remainder(placeM, apartM))
}

// grommetBends sets what its ends bear on; what lies in a basket or a choke is said
// at the hitch.
func (w *work) grommetBends(leg plan.Leg, n int, f *facts.Grommet) {
	support := w.plan.Supports[w.supportOfLeg(leg)]
	upper := w.hangsFrom(support, leg)
	if n > 0 {
		upper = surfaceOf(leg.Down[n-1].Item, gear.LowerEnd, false)
		upper.name = orItem(upper.name, leg.Down[n-1])
	}
	f.UpperOn = upper.name
	f.UpperBendD = w.bendOn(f, upper.thick, "upper_bend_d")
	if f.Hitch != straight {
		f.LowerOn = goesTo(leg.End)
		return
	}
	lower := surface{name: goesTo(leg.End)}
	switch {
	case n < len(leg.Down)-1:
		lower = surfaceOf(leg.Down[n+1].Item, gear.UpperEnd, n+1 == len(leg.Down)-1 && leg.End.Kind == plan.To)
		lower.name = orItem(lower.name, leg.Down[n+1])
	case leg.End.Attachment != nil:
		lower = surface{name: nameOf(leg.End.Attachment), thick: thicknessOf(leg.End.Attachment)}
	}
	f.LowerOn = lower.name
	f.LowerBendD = w.bendOn(f, lower.thick, "lower_bend_d")
}

// bendOn is the thickness of what an end bears on, in diameters of the body.
func (w *work) bendOn(f *facts.Grommet, thick measure, field string) *float64 {
	if thick.m == nil && len(thick.needs) == 0 && thick.why.Text == "" {
		thick.why = facts.Reason{Text: "what " + f.ID + " bears on has no one thickness"}
	}
	return ratio(w.take(f.Key, f.At[1:], thick, field), f.DiameterM)
}

// orItem names what has no surface of its own, such as another sling.
func orItem(name string, u plan.Use) string {
	if name == "" {
		return u.Item.Base().ID
	}
	return name
}

// supportOfLeg is the index of the support that a leg hangs from.
func (w *work) supportOfLeg(leg plan.Leg) int {
	for _, l := range w.hung.Legs {
		if l.ID == leg.ID {
			return l.Support
		}
	}
	return 0
}

func orNotGiven(word string) string {
	if word == "" {
		return notGiven
	}
	return word
}
