package compute

import (
	"strings"

	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// fitsAtEnd are those at the attachment of a leg. A sling's eye straight on a
// plate is no fit: what is to be said of it is said of the leg.
func (w *work) fitsAtEnd(leg plan.Leg) {
	a := leg.End.Attachment
	switch x := leg.Down[len(leg.Down)-1].Item.(type) {
	case *gear.Shackle:
		w.shackleAtEnd(leg, x, shackleEnd(x, gear.LowerEnd, pinOf(x, true)))
	case *gear.Hook:
		name := x.ID + besideIt(w.othersAt(leg))
		f := opening(leg.ID, x, "in_hole", "hook_in_hole", name, holeName(a))
		w.fill(f, x.Pointer, w.throughHole(leg), holeOf(a))
	case *gear.WireRopeSling:
		if a.Kind != plan.Padeye {
			ring := surface{kind: onFitting, name: "attachment " + a.ID, at: a.Pointer, thick: thicknessOf(a)}
			w.eye(leg.ID, x, "lower", x.Lower, ring)
		}
	}
}

// shackleAtEnd is a shackle whose lower end takes the attachment: as a rule its
// pin goes through the hole and the plate between its ears.
func (w *work) shackleAtEnd(leg plan.Leg, s *gear.Shackle, lower surface) {
	a := leg.End.Attachment
	through, between := "pin_in_hole", "plate_in_jaw"
	switch {
	case lower.kind == onBow:
		through, between = "bow_in_hole", "plate_in_bow"
	case a.Kind != plan.Padeye:
		through, between = "pin_in_ring", "ring_in_jaw"
	}
	f := opening(leg.ID, s, "in_hole", through, lower.name+besideIt(w.othersAt(leg)), holeName(a))
	w.fill(f, s.Pointer, w.throughHole(leg), holeOf(a))
	f = opening(leg.ID, s, "jaw", between, "attachment "+a.ID, lower.opening())
	f.Spaced = s.Spacers
	w.fill(f, s.Pointer, thicknessOf(a), lower.room)
}

func holeName(a *plan.Attachment) string { return "the hole of attachment " + a.ID }

func holeOf(a *plan.Attachment) measure {
	return given(a.Hole, a.Pointer, "hole", "the hole of attachment "+a.ID, "the hole")
}

func thicknessOf(a *plan.Attachment) measure {
	return given(a.Thickness, a.Pointer, "thickness", "the thickness of attachment "+a.ID, "the thickness at the hole")
}

// othersAt lists the lowest parts of the later legs that go to the same
// attachment by a shackle or hook. They are looked at together with the first
// of them, and only there.
func (w *work) othersAt(leg plan.Leg) []gear.Item {
	var list []gear.Item
	later := false
	for _, other := range w.plan.Support.Legs {
		lowest := other.Down[len(other.Down)-1]
		switch {
		case other.End.Attachment != leg.End.Attachment || isSling(lowest):
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

// throughHole is the width of all that goes through one hole side by side: the
// leg's own lowest part and those of the other legs there. In a row along the
// hole's diameter they fit if their widths add up to no more than that.
func (w *work) throughHole(leg plan.Leg) measure {
	own := leg.Down[len(leg.Down)-1].Item
	sum := endWidth(own)
	for _, other := range w.othersAt(leg) {
		m := endWidth(other)
		sum.needs = append(sum.needs, m.needs...)
		if sum.m == nil || m.m == nil {
			sum.m = nil
		} else {
			sum.m = ptr(*sum.m + *m.m)
		}
	}
	return sum
}

// endWidth is the thickness of what goes through the attachment's hole.
func endWidth(item gear.Item) measure {
	if h, ok := item.(*gear.Hook); ok {
		return given(h.BodyWidth, h.Pointer, "body_width", "the section of "+h.ID+" at its bowl", "the section of "+h.ID)
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
