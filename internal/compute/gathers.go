package compute

import (
	"slices"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// bearing is a leg, or an intermediate link with its legs, that bears on what
// gathers it. A parked leg hangs there too: it takes room, and pulls nowhere.
type bearing struct {
	width measure
	legs  []int // none for a parked leg
	link  int   // index among the support's links, -1 for a leg
}

// gathers lists the places where legs come together: the hook or what is last
// below it, then the intermediate links.
func (w *work) gathers() {
	s := w.plan.Support
	var onTop []bearing
	for i, leg := range s.Legs {
		if leg.Link == nil {
			onTop = append(onTop, legBearing(leg, i))
		}
	}
	for _, leg := range s.Parked {
		if leg.Link == nil {
			onTop = append(onTop, legBearing(leg))
		}
	}
	for _, u := range w.idleLinks() {
		onTop = append(onTop, bearing{width: surfaceOf(u.Item, gear.UpperEnd, false).thick, link: -1})
	}
	for i, l := range s.Links {
		link := surfaceOf(l.Item, gear.UpperEnd, false)
		onTop = append(onTop, bearing{link.thick, l.Legs, i})
	}
	if n := len(s.By); n > 0 {
		item := s.By[n-1].Item
		w.gather("gather/"+s.From+"/"+item.Base().ID, item.Base().ID, surfaceOf(item, gear.LowerEnd, false), onTop)
	} else {
		w.gather("gather/"+s.From, s.From, w.craneHook(), onTop)
	}
	for _, l := range s.Links {
		var legs []bearing
		for _, i := range l.Legs {
			legs = append(legs, legBearing(s.Legs[i], i))
		}
		for _, leg := range l.Parked {
			legs = append(legs, legBearing(leg))
		}
		id := l.Item.Base().ID
		w.gather("gather/"+s.From+"/"+id, id, surfaceOf(l.Item, gear.LowerEnd, false), legs)
	}
}

// earsOverPin is the width that a shackle hung by its pin takes, in pin
// diameters: its ears stand round the pin (common practice).
const earsOverPin = 2.0

// idleLinks lists the intermediate links of which every leg is parked.
func (w *work) idleLinks() []plan.Use {
	return slices.DeleteFunc(w.intermediateLinks(), func(u plan.Use) bool {
		return slices.ContainsFunc(w.plan.Support.Links, func(l plan.LinkUse) bool { return l.Item == u.Item })
	})
}

// legBearing is a leg by the width of its uppermost part; index is its own, and
// left out for one that is parked.
func legBearing(leg plan.Leg, index ...int) bearing {
	b := bearing{legs: index, link: -1}
	s, ok := leg.Down[0].Item.(*gear.WireRopeSling)
	switch upper := surfaceOf(leg.Down[0].Item, gear.UpperEnd, len(leg.Down) == 1); {
	case ok && s.Upper.Kind == socketEye:
		b.width.why = facts.Reason{Text: "how wide the socket of " + s.ID + " is, the plan does not say"}
	case ok:
		b.width = ropeWidth(s, s.Upper)
	case upper.kind == onPin:
		b.width = upper.thick.times(earsOverPin)
	default:
		b.width = upper.thick
	}
	return b
}

// gather adds a record of what gathers two legs or links and more.
func (w *work) gather(key, id string, on surface, list []bearing) {
	if len(list) < 2 {
		return
	}
	g := facts.Gather{Record: facts.Record{Key: key, At: at(on.at)}, ID: id, Name: on.name, What: on.kind}
	for _, b := range list {
		g.Legs += len(b.legs)
		if b.link >= 0 {
			g.Links++
		}
	}
	switch on.kind {
	case onBow, onPin:
		g.OnPin = ptr(on.kind == onPin)
	case onShackle:
		w.wait(g.Key, on.room.needs, "on_pin")
	}
	g.RoomM = w.take(key, on.at, on.room, "room_m", "filled_ratio")
	g.NeedsM = w.sideBySide(key, on.at, list)
	g.FilledRatio = ratio(g.NeedsM, g.RoomM)
	g.IncludedAngleDeg = w.spread(list)
	w.unposed(key, absent(g, "included_angle_deg")...)
	w.out.Document.Gathers = append(w.out.Document.Gathers, g)
}

// sideBySide adds up the widths of what bears on something.
func (w *work) sideBySide(key, at string, list []bearing) *float64 {
	sum := ptr(0.0)
	for _, b := range list {
		width := w.take(key, at, b.width, "needs_m", "filled_ratio")
		if width == nil || sum == nil {
			sum = nil
			continue
		}
		*sum += *width
	}
	return sum
}

// spread is the largest angle between the pulls of two of them, in degrees.
func (w *work) spread(list []bearing) *float64 {
	if w.pose.balance == nil {
		return nil
	}
	most := 0.0
	for i, a := range list {
		for _, b := range list[:i] {
			if len(a.legs) > 0 && len(b.legs) > 0 {
				most = max(most, capacity.IncludedAngleDeg(components(w.pullDown(a)), components(w.pullDown(b))))
			}
		}
	}
	return &most
}

// pullDown is the direction in which a leg, or a link with its legs, pulls. A
// link whose legs are all slack points between them.
func (w *work) pullDown(b bearing) r3.Vec {
	lines := w.pose.balance.Lines
	if b.link < 0 {
		return lines[b.legs[0]].Direction
	}
	if pull := w.pose.balance.Together[b.link]; pull.MagnitudeN > 0 {
		return pull.ForceN
	}
	var sum r3.Vec
	for _, i := range b.legs {
		sum = r3.Add(sum, lines[i].Direction)
	}
	return sum
}
