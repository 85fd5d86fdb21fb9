package compute

import (
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
	"liftlint/internal/plan"
)

// fits lists where one part goes over or into another: above the legs, then
// leg by leg from top to bottom. The maker of a bridle joins its intermediate
// links to the master link: whether there is room for them is said where they
// gather.
func (w *work) fits() {
	for _, s := range w.plan.Supports {
		w.fitsAbove(s)
	}
	for _, at := range w.hung.Legs {
		s, leg := w.plan.Supports[at.Support], at.Leg
		if leg.End.Kind == plan.RunsTo {
			w.fitsOverSheave(leg)
			continue
		}
		w.fitsDown(leg, w.hangsFrom(s, leg))
		switch leg.End.Kind {
		case plan.To:
			w.fitsAtEnd(leg)
		case plan.Basket:
			w.secondEye(leg, w.lowest(w.otherSupport(at)))
		}
	}
}

// fitsDown are those of the parts of a leg, from what it hangs from to its lowest
// part.
func (w *work) fitsDown(leg plan.Leg, above surface) {
	for n, u := range leg.Down {
		lowest := n == len(leg.Down)-1 && leg.End.Kind == plan.To
		if s, ok := u.Item.(*gear.WireRopeSling); ok {
			w.slingFits(leg, n, s, above)
		} else if n == 0 || !toldOfEye(leg.Down[n-1], u) {
			w.joined(leg.ID, u.Item, inLeg(leg, surfaceOf(u.Item, gear.UpperEnd, lowest)), above)
		}
		above = inLeg(leg, surfaceOf(u.Item, gear.LowerEnd, lowest))
	}
}

// inLeg is a surface as it lies in its leg: an endless sling that is laid double bears
// with two bights side by side.
func inLeg(leg plan.Leg, s surface) surface {
	if leg.Doubled && s.kind == onLoop {
		s.thick = s.thick.times(2)
	}
	return s
}

// toldOfEye reports whether all that is to be said of two parts that follow each
// other is said elsewhere: of the eye of a wire rope sling above, or of the leg where
// both are slings.
func toldOfEye(above, below plan.Use) bool {
	_, eyed := above.Item.(*gear.WireRopeSling)
	return eyed || isSling(above) && isSling(below)
}

// otherSupport is the one that the second eye of a basket goes up to.
func (w *work) otherSupport(leg hang.Leg) plan.Support {
	if leg.End.UpTo != nil {
		return w.plan.Supports[*leg.End.UpTo]
	}
	return w.plan.Supports[leg.Support]
}

// secondEye is the other end of a basket, its lower eye or the shackle in it, on
// what it goes up to.
func (w *work) secondEye(leg plan.Leg, over surface) {
	last := leg.Down[len(leg.Down)-1].Item
	s, ok := last.(*gear.WireRopeSling)
	switch {
	case !ok && isSling(leg.Down[len(leg.Down)-1]) && leg.End.UpTo == nil:
		return // it bears as its other end does
	case !ok:
		w.joined(leg.ID+"/second", last, surfaceOf(last, gear.UpperEnd, false), over)
	case over.kind != onPoint:
		w.eye(leg.ID, s, "lower", s.Lower, over)
	}
}

// fitsOverSheave are those of a sling that runs over a sheave to two points: its
// parts lie in their order from the first to the second.
func (w *work) fitsOverSheave(leg plan.Leg) {
	for n, u := range leg.Down {
		s, ok := u.Item.(*gear.WireRopeSling)
		if !ok {
			continue
		}
		if n > 0 && !isSling(leg.Down[n-1]) {
			w.eye(leg.ID, s, "upper", s.Upper, surfaceOf(leg.Down[n-1].Item, gear.UpperEnd, true))
		}
		if n < len(leg.Down)-1 && !isSling(leg.Down[n+1]) {
			w.eye(leg.ID, s, "lower", s.Lower, surfaceOf(leg.Down[n+1].Item, gear.UpperEnd, true))
		}
	}
	for k, a := range []*plan.Attachment{leg.End.Attachment, leg.End.Second} {
		end := leg.Down[k*(len(leg.Down)-1)]
		switch x := end.Item.(type) {
		case *gear.Shackle:
			w.shackleAt(leg.ID, a, nil, x, shackleEnd(x, gear.LowerEnd, pinOf(x, true)))
		case *gear.InLine:
			w.inLineAt(leg.ID, a, nil, x, gear.LowerEnd)
		}
	}
}

// slingFits are those of a sling's two eyes. One sling's eye in another's is no
// fit: what is to be said of it is said of the leg.
func (w *work) slingFits(leg plan.Leg, n int, s *gear.WireRopeSling, above surface) {
	if (n == 0 || !isSling(leg.Down[n-1])) && above.kind != onPoint {
		w.eye(leg.ID, s, "upper", s.Upper, above)
	}
	if n == len(leg.Down)-1 {
		return
	}
	if next := leg.Down[n+1]; !isSling(next) {
		lowest := n+1 == len(leg.Down)-1 && leg.End.Kind == plan.To
		end := gear.UpperEnd
		if leg.End.Kind == plan.Basket {
			end = gear.LowerEnd // it hangs from the other support, and the sling from it
		}
		w.eye(leg.ID, s, "lower", s.Lower, surfaceOf(next.Item, end, lowest))
	}
}

// fitsAbove are those between a hook, or a point of a beam, and what gathers the
// legs below it.
func (w *work) fitsAbove(s plan.Support) {
	by, from := s.By, s.From
	for i, u := range by {
		upper := surfaceOf(u.Item, gear.UpperEnd, false)
		s.By = nil
		above := w.lowest(s)
		if i > 0 {
			above = surfaceOf(by[i-1].Item, gear.LowerEnd, false)
		}
		w.joined(from, u.Item, upper, above)
	}
}

// overHook is the topmost part over the hook of the crane: the hook passes into
// a link, into a bow, or into the jaw above a pin that lies in it.
func (w *work) overHook(where string, item gear.Item, upper, hook surface) {
	f := opening(where, item, "over_hook", "link_over_hook", upper.opening(), hook.name)
	w.fill(f, upper.at, hook.thick, roomAbove(item, upper, hook.thick.m))
}

// joined are two closed parts in one another: each has to go into the other.
// How wide a hook's own eye is inside, no plan says.
func (w *work) joined(where string, item gear.Item, below, above surface) {
	if above.kind == onHook && (below.kind == onLoop || below.kind == onChain) {
		return // an endless sling goes over any hook, how it is bent is no fit; the end of a chain no plan describes
	}
	if above.kind == onHook {
		w.overHook(where, item, below, above)
		return
	}
	if above.kind == onPoint {
		switch x := item.(type) {
		case *gear.Shackle:
			w.shackleAt(where, above.point, nil, x, below)
			return
		case *gear.InLine:
			w.inLineAt(where, above.point, nil, x, gear.UpperEnd)
			return
		}
	}
	if _, byTag := item.(*gear.TagRatedSling); byTag && above.kind == onPoint {
		return // a sling straight on a plate: what is to be said of it is said of the leg
	}
	both := closedInClosed(above, below)
	if above.kind != onLoop && above.kind != onChain {
		f := opening(where, item, "in", intoOpening(above), below.name, above.opening())
		f.BothClosed, both = both, false
		w.fill(f, below.at, below.thick, above.room)
	}
	if below.kind != onFitting && below.kind != onLoop && below.kind != onChain {
		f := opening(where, item, "round", intoOpening(below), above.name, below.opening())
		f.BothClosed = both // told once
		w.fill(f, below.at, above.thick, roomAbove(item, below, above.thick.m))
	}
}

func intoOpening(s surface) string {
	if s.kind == onLink {
		return "part_in_link"
	}
	return "link_in_bow"
}

// roomAbove is the clear width at the upper end of a part. A pear-shaped link is
// narrower there than where the legs bear: what does not go in below does not go
// in above either, and of what does the plan has to give the upper width.
func roomAbove(item gear.Item, upper surface, thing *float64) measure {
	l, ok := item.(*gear.Link)
	if ok && l.UpperWidth != nil {
		return given(l.UpperWidth, l.Pointer, "upper_width", "", "the upper width of "+l.ID)
	}
	if !ok || l.Shape == "oblong" || l.Kind == gear.IntermediateLinkKind || upper.room.m == nil || thing != nil && *thing > *upper.room.m {
		return upper.room
	}
	if l.Shape == "" {
		return measure{needs: []facts.Input{input(l.Pointer, "shape", l.ID+"'s shape")}}
	}
	return given(l.UpperWidth, l.Pointer, "upper_width", l.ID+"'s upper inside width", "the upper width of "+l.ID)
}

// opening begins a record of a part in an opening, at the part.
func opening(where string, item gear.Item, end, what, inner, outer string) facts.Fit {
	base := item.Base()
	return facts.Fit{
		Record: facts.Record{Key: "fit/" + where + "/" + base.ID + "/" + end, At: at(base.Pointer)},
		What:   what, Inner: inner, Outer: outer,
	}
}

// fill adds to a record what goes in and the width of the opening.
func (w *work) fill(f facts.Fit, pointer string, thing, room measure) {
	f.NeedsM = w.take(f.Key, pointer, thing, "needs_m", "filled_ratio")
	f.RoomM = w.take(f.Key, pointer, room, "room_m", "filled_ratio")
	f.FilledRatio = ratio(f.NeedsM, f.RoomM)
	w.out.Document.Fits = append(w.out.Document.Fits, f)
}
