package compute

import (
	"fmt"
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
	"liftlint/internal/plan"
)

// bearing is a leg, or an intermediate link with its legs, that bears on what
// gathers it. A parked leg hangs there too: it takes room, and pulls nowhere.
type bearing struct {
	width  measure
	legs   []int // among all; none for a parked leg
	link   int   // index among the support's links, -1 for a leg
	idle   bool  // an intermediate link of which every leg is parked
	second bool  // the other end of a basket
}

// gathers lists the places where legs come together: of each support the hook or
// what is last below it, then its intermediate links.
func (w *work) gathers() {
	for i, s := range w.plan.Supports {
		w.gathersOf(i, s)
	}
}

func (w *work) gathersOf(support int, s plan.Support) {
	first := w.legIndex(support)
	var onTop []bearing
	for i, leg := range s.Legs {
		if leg.Link == nil {
			onTop = append(onTop, legBearings(leg, support, first+i)...)
		}
	}
	for i, leg := range w.hung.Legs {
		if leg.Support != support && leg.End.UpTo != nil && *leg.End.UpTo == support {
			onTop = append(onTop, secondBearing(leg.Leg, i))
		}
	}
	for _, leg := range s.Parked {
		if leg.Link == nil {
			onTop = append(onTop, bearing{width: upperWidth(leg), link: -1})
		}
	}
	for _, u := range idleLinks(s) {
		onTop = append(onTop, bearing{width: surfaceOf(u.Item, gear.UpperEnd, false).thick, link: -1, idle: true})
	}
	for i, l := range s.Links {
		link := surfaceOf(l.Item, gear.UpperEnd, false)
		onTop = append(onTop, bearing{width: link.thick, legs: offset(l.Legs, first), link: i})
	}
	key, id := "gather/"+s.From, s.From
	if n := len(s.By); n > 0 {
		id = s.By[n-1].Item.Base().ID
		key += "/" + id
	}
	w.gather(key, id, w.lowest(s), onTop)
	for _, l := range s.Links {
		var legs []bearing
		for _, i := range l.Legs {
			legs = append(legs, legBearings(s.Legs[i], support, first+i)...)
		}
		for _, leg := range l.Parked {
			legs = append(legs, bearing{width: upperWidth(leg), link: -1})
		}
		id := l.Item.Base().ID
		w.gather("gather/"+s.From+"/"+id, id, surfaceOf(l.Item, gear.LowerEnd, false), legs)
	}
}

func offset(list []int, by int) []int {
	out := make([]int, len(list))
	for i, n := range list {
		out[i] = n + by
	}
	return out
}

// earsOverPin is the width that a shackle hung by its pin takes, in pin
// diameters: its ears stand round the pin (common practice).
const earsOverPin = 2.0

// idleLinks lists the intermediate links of which every leg is parked.
func idleLinks(s plan.Support) []plan.Use {
	return slices.DeleteFunc(intermediateLinks(s), func(u plan.Use) bool {
		return slices.ContainsFunc(s.Links, func(l plan.LinkUse) bool { return l.Item == u.Item })
	})
}

// legBearings are what a leg bears with on what it hangs from: its uppermost part,
// and the other end of a basket that goes up to the same place. Over a sheave a
// sling lies once.
func legBearings(leg plan.Leg, support, index int) []bearing {
	list := []bearing{{width: upperWidth(leg), legs: []int{index}, link: -1}}
	if leg.End.Kind == plan.Basket && (leg.End.UpTo == nil || *leg.End.UpTo == support) {
		list = append(list, secondBearing(leg, index))
	}
	return list
}

// secondBearing is the other end of a basket.
func secondBearing(leg plan.Leg, index int) bearing {
	b := bearing{legs: []int{index}, link: -1, second: true}
	last := leg.Down[len(leg.Down)-1].Item
	if s, ok := last.(*gear.WireRopeSling); ok {
		b.width = ropeWidth(s, s.Lower)
	} else {
		b.width = surfaceOf(last, gear.LowerEnd, false).thick
	}
	return b
}

// upperWidth is the width of a leg's uppermost part.
func upperWidth(leg plan.Leg) measure {
	item := leg.Down[0].Item
	s, ok := item.(*gear.WireRopeSling)
	switch upper := inLeg(leg, surfaceOf(item, gear.UpperEnd, len(leg.Down) == 1)); {
	case ok && s.Upper.Kind == socketEye:
		return measure{why: facts.Reason{Text: "how wide the socket of " + s.ID + " is, the plan does not say"}}
	case ok:
		return ropeWidth(s, s.Upper)
	case upper.kind == onPin:
		return upper.thick.times(earsOverPin)
	default:
		return upper.thick
	}
}

// gather adds a record of what gathers two legs or links and more.
func (w *work) gather(key, id string, on surface, list []bearing) {
	if len(list) < 2 || on.kind == onPoint {
		return
	}
	g := facts.Gather{Record: facts.Record{Key: key, At: at(on.at)}, ID: id, Name: on.name, What: on.kind}
	for _, b := range list {
		g.Legs += len(b.legs)
		if b.link >= 0 {
			g.Links++
		}
	}
	g.Bearers = bearers(list)
	w.pattern(&g, on)
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

// bearers words what lies side by side: each end of a basket counts as one.
func bearers(list []bearing) string {
	links := 0
	for _, b := range list {
		if b.link >= 0 || b.idle {
			links++
		}
	}
	var parts []string
	for _, of := range []struct {
		n    int
		word string
	}{{len(list) - links, "leg"}, {links, "intermediate link"}} {
		switch {
		case of.n == 1:
			parts = append(parts, "1 "+of.word)
		case of.n > 1:
			parts = append(parts, fmt.Sprintf("%d %ss", of.n, of.word))
		}
	}
	return strings.Join(parts, " and ")
}

// pattern sets that of the shackle that legs come together in.
func (w *work) pattern(g *facts.Gather, on surface) {
	for _, item := range w.plan.Gear {
		s, ok := item.(*gear.Shackle)
		if !ok || s.Pointer != on.at {
			continue
		}
		if g.Pattern = word(s.Pattern); g.Pattern == nil {
			w.wait(g.Key, []facts.Input{input(s.Pointer, "pattern", "the pattern of "+s.ID+": bow or dee")}, "pattern")
		}
	}
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

// spread is the largest angle between the pulls of two of them, in degrees, in
// any phase.
func (w *work) spread(list []bearing) *float64 {
	if !w.steady() {
		return nil
	}
	most := 0.0
	for _, p := range w.hung.Positions {
		for i, a := range list {
			for _, b := range list[:i] {
				if pulls(p, a) && pulls(p, b) {
					most = max(most, capacity.IncludedAngleDeg(components(pullDown(p, a)), components(pullDown(p, b))))
				}
			}
		}
	}
	return &most
}

// pulls reports whether a bearing pulls anywhere in a position.
func pulls(p hang.Position, b bearing) bool {
	return slices.ContainsFunc(b.legs, p.InUse)
}

// pullDown is the direction in which a leg, or a link with its legs, pulls. A
// link whose legs are all slack points between them.
func pullDown(p hang.Position, b bearing) r3.Vec {
	if b.link < 0 {
		runs := p.Line(b.legs[0]).Runs
		if b.second {
			return runs[len(runs)-1].Direction
		}
		return runs[0].Direction
	}
	return p.Direction(b.legs)
}
