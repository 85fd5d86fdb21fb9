package compute

import (
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// fitsAtEnd are those at the attachment of a leg. A sling's eye straight on a
// plate is no fit: what is to be said of it is said of the leg.
func (w *work) fitsAtEnd(leg plan.Leg) {
	a := leg.End.Attachment
	switch x := leg.Down[len(leg.Down)-1].Item.(type) {
	case *gear.Shackle:
		w.shackleAt(leg.ID, a, w.othersAt(leg), x, shackleEnd(x, gear.LowerEnd, pinOf(x, true)))
	case *gear.Hook:
		others := w.othersAt(leg)
		name := x.ID + besideIt(others)
		f := opening(leg.ID, x, "in_hole", "hook_in_hole", name, holeName(a))
		w.fill(f, x.Pointer, throughHole(x, others), holeOf(a))
	case *gear.InLine:
		w.inLineAt(leg.ID, a, w.othersAt(leg), x, gear.LowerEnd)
	case *gear.WireRopeSling:
		if a.Kind != plan.Padeye {
			ring := surface{kind: onFitting, name: "attachment " + a.ID, at: a.Pointer, thick: thicknessOf(a)}
			w.eye(leg.ID, x, "lower", x.Lower, ring)
		}
	}
}

// shackleAt is a shackle one end of which takes an attachment or a point of a
// beam: as a rule its pin goes through the hole and the plate between its ears.
// Others are what goes through the same hole.
func (w *work) shackleAt(where string, a *plan.Attachment, others []gear.Item, s *gear.Shackle, taking surface) {
	through, between := "pin_in_hole", "plate_in_jaw"
	switch {
	case taking.kind == onBow:
		through, between = "bow_in_hole", "plate_in_bow"
	case a.Kind != plan.Padeye:
		through, between = "pin_in_ring", "ring_in_jaw"
	}
	f := opening(where, s, "in_hole", through, taking.name+besideIt(others), holeName(a))
	sum := taking.thick
	for _, other := range others {
		sum = sum.plus(endWidth(other))
	}
	if taking.kind == onBow {
		w.earsThrough(&f, s, holeOf(a))
	}
	w.fill(f, s.Pointer, sum, holeOf(a))
	f = opening(where, s, "jaw", between, nameOf(a), taking.opening())
	f.Spaced = s.Spacers
	w.fill(f, s.Pointer, thicknessOf(a), taking.room)
}

// earsThrough is what of a hole the pin of a shackle is whose bow is to lie in it: its
// ears go through first.
func (w *work) earsThrough(f *facts.Fit, s *gear.Shackle, hole measure) {
	const field = "pin_over_hole_ratio"
	pin := given(s.PinDiameter, s.Pointer, "pin_diameter", s.ID+"'s pin diameter", s.ID+"'s pin")
	f.PinOverHole = ratio(w.take(f.Key, s.Pointer, pin, field), w.take(f.Key, s.Pointer, hole, field))
}

// nameOf is what an attachment of the load, or a point of a beam, is called.
func nameOf(a *plan.Attachment) string {
	if a.Beam != nil {
		return "point " + a.ID
	}
	return "attachment " + a.ID
}

func holeName(a *plan.Attachment) string { return "the hole of " + nameOf(a) }

func holeOf(a *plan.Attachment) measure {
	return given(a.Hole, a.Pointer, "hole", holeName(a), "the hole")
}

func thicknessOf(a *plan.Attachment) measure {
	return given(a.Thickness, a.Pointer, "thickness", "the thickness of "+nameOf(a), "the thickness at the hole")
}

// othersAt lists the lowest parts of the later legs that go to the same
// attachment by a shackle or hook. They are looked at together with the first
// of them, and only there.
func (w *work) othersAt(leg plan.Leg) []gear.Item {
	var list []gear.Item
	later := false
	for _, other := range w.hung.Legs {
		lowest := other.Down[len(other.Down)-1]
		switch {
		case other.End.Kind != plan.To || other.End.Attachment != leg.End.Attachment || isSling(lowest) && lowest.Item.Base().Kind != gear.GrommetKind:
		case other.ID == leg.ID:
			later = true
		case !later:
			return nil
		default:
			list = append(list, lowest.Item)
		}
	}
	return list
}

// throughHole is the width of all that goes through one hole side by side: in a
// row along the hole's diameter they fit if their widths add up to no more.
func throughHole(own gear.Item, others []gear.Item) measure {
	sum := endWidth(own)
	for _, other := range others {
		sum = sum.plus(endWidth(other))
	}
	return sum
}

// endWidth is the thickness of what goes through the attachment's hole.
func endWidth(item gear.Item) measure {
	if h, ok := item.(*gear.Hook); ok {
		return given(h.BodyWidth, h.Pointer, "body_width", "the section of "+h.ID+" at its bowl", "the section of "+h.ID)
	}
	if x, ok := item.(*gear.InLine); ok {
		return atHole(x, gear.LowerEnd)
	}
	return surfaceOf(item, gear.LowerEnd, true).thick
}

// besideIt names what shares the hole.
func besideIt(others []gear.Item) string {
	if len(others) == 0 {
		return ""
	}
	var names []string
	for _, o := range others {
		names = append(names, o.Base().ID)
	}
	return " with " + strings.Join(names, " and ") + " beside it"
}
