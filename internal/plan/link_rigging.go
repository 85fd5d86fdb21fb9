package plan

import (
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/gear"
	"liftlint/internal/nearest"
	"liftlint/internal/yamldoc"
)

// supports links the rigging. What legs hang from comes first: a basket may go
// up to a support further down the list.
func (l *linker) supports(list []fields) []Support {
	all := make([]Support, len(list))
	for i, f := range list {
		all[i] = l.support(f, i)
		l.between(&all[i], f.of("by").items())
	}
	for i, f := range list {
		l.legs(all, i, f.of("legs").items())
	}
	for i, f := range list {
		l.allLegsOfBridle(all[i])
		l.carries(all, i, f.of("legs").node)
	}
	for _, s := range all {
		pinsInBeam(s)
	}
	return all
}

// pinsInBeam puts the pins of the shackles that hang in a point of a beam into its
// plate, where the plan does not say otherwise: at their upper ends.
func pinsInBeam(s Support) {
	if s.Point == nil {
		return
	}
	var tops []Use
	if len(s.By) > 0 {
		tops = s.By[:1]
	} else {
		for _, leg := range slices.Concat(s.Legs, s.Parked) {
			tops = append(tops, leg.Down[:min(1, len(leg.Down))]...)
		}
	}
	for _, u := range tops {
		if k, ok := u.Item.(*gear.Shackle); ok && k.Pin == "" {
			k.Pin = gear.UpperEnd
		}
	}
}

// support finds what legs hang from: a hook or a point of a beam.
func (l *linker) support(f fields, index int) Support {
	s := Support{Pointer: f.pointer(), From: f.text("from"), Hook: -1, Height: f.length("height_above_datum")}
	from := f.node.Get("from")
	if from == nil {
		return s
	}
	if at, twice := l.hung[s.From]; twice {
		l.faultWith(DuplicateID, from, fmt.Sprintf("%q names two entries of rigging: put all its legs into one", s.From), "the first one", at)
		l.lostFrom = true
		return s
	}
	l.hung[s.From] = from.Place.Value
	l.froms.add(s.From, index)
	hook, isHook := l.hooks.of[s.From]
	switch point, isPoint := l.points.of[s.From]; {
	case isHook:
		s.Hook = hook
	case isPoint:
		s.Point = point
	default:
		l.lostFrom = true
		l.noSupport(from)
	}
	return s
}

// noSupport reports something that legs can't hang from.
func (l *linker) noSupport(from *yamldoc.Node) {
	beam, _, _ := strings.Cut(from.Text, ".")
	item, isGear := l.items.of[beam]
	_, isBeam := item.(*gear.Beam)
	switch {
	case isBeam:
		l.noPoint(from, item)
	case isGear:
		l.fault(UnknownReference, from, fmt.Sprintf("%s is %s: legs hang from a hook or from a point of a beam; what is between stands in `by`", beam, article(kindWords(item.Base().Kind))))
	default:
		l.fault(UnknownReference, from, fmt.Sprintf("no hook and no point of a beam has the id %q%s", from.Text, nearest.Hint(from.Text, slices.Concat(l.hooks.ids, l.points.ids))))
	}
}

// noPoint reports a name that begins with that of a beam and is none of its
// points.
func (l *linker) noPoint(n *yamldoc.Node, beam gear.Item) {
	id := beam.Base().ID
	if n.Text == id {
		l.fault(UnknownReference, n, fmt.Sprintf("%s is %s: name one of its points%s", id, article(kindWords(beam.Base().Kind)), l.pointsOf(id)))
		return
	}
	l.fault(UnknownReference, n, fmt.Sprintf("%s has no point %q%s", id, n.Text, nearest.Hint(n.Text, l.pointIDs(id))))
}

// pointIDs lists the points of a beam.
func (l *linker) pointIDs(beam string) []string {
	return slices.DeleteFunc(slices.Clone(l.points.ids), func(id string) bool { return !strings.HasPrefix(id, beam+".") })
}

// pointsOf completes a sentence with the points of a beam.
func (l *linker) pointsOf(beam string) string {
	if ids := l.pointIDs(beam); len(ids) > 0 {
		return ": " + strings.Join(ids, ", ")
	}
	return ""
}

// carries reports a support from which nothing hangs that carries.
func (l *linker) carries(all []Support, index int, legs *yamldoc.Node) {
	s := all[index]
	goesUp := slices.ContainsFunc(all, func(other Support) bool {
		return slices.ContainsFunc(other.Legs, func(leg Leg) bool { return leg.End.UpTo != nil && *leg.End.UpTo == index })
	})
	switch {
	case len(s.Legs) > 0 || goesUp || legs == nil:
	case len(s.Parked) > 0:
		l.fault(WrongPart, legs, "every leg is parked: at least one has to carry the load")
	default:
		l.fault(WrongPart, legs, fmt.Sprintf("%s has no legs, and no basket goes up to it: leave this entry out, or write its legs", s.From))
	}
}

// between links what is between a support and its legs.
func (l *linker) between(s *Support, by []fields) {
	for i, f := range by {
		u, ok := l.use(f, gear.ShackleKind, gear.MasterLinkKind, gear.BridleKind, gear.SheaveBlockKind)
		if !ok || !l.ownPlace(f) {
			continue
		}
		last := i == len(by)-1
		if u.Item.Base().Kind == gear.SheaveBlockKind && !last {
			l.fault(WrongPart, f.node, "a sling runs over a sheave block: it comes last, nothing hangs between it and the sling")
		}
		b, isBridle := u.Item.(*gear.Bridle)
		if !isBridle {
			s.By = append(s.By, u)
			continue
		}
		if !last {
			l.fault(WrongPart, f.node, "a bridle brings its own legs: it comes last, nothing hangs between it and them")
		}
		s.Bridle = &BridleUse{Pointer: f.pointer(), Bridle: b}
		if b.Master != nil {
			s.By = append(s.By, Use{Pointer: f.pointer(), Item: b.Master})
		}
	}
}

// block is the sheave block that a sling runs over below a support; nil where
// there is none.
func (s *Support) block() gear.Item {
	for _, u := range s.By {
		if u.Item.Base().Kind == gear.SheaveBlockKind {
			return u.Item
		}
	}
	return nil
}

// addLeg puts a leg among those that carry or those that are parked, and under
// the intermediate link that it hangs from.
func (l *linker) addLeg(s *Support, leg Leg, parked bool) {
	if parked {
		s.Parked = append(s.Parked, leg)
	} else {
		s.Legs = append(s.Legs, leg)
	}
	if leg.Link == nil {
		return
	}
	i := slices.IndexFunc(s.Links, func(link LinkUse) bool { return link.Item == leg.Link.Item })
	if i < 0 {
		i = len(s.Links)
		s.Links = append(s.Links, LinkUse{Use: *leg.Link})
	}
	if parked {
		s.Links[i].Parked = append(s.Links[i].Parked, leg)
	} else {
		s.Links[i].Legs = append(s.Links[i].Legs, len(s.Legs)-1)
	}
}
