package plan

import (
	"fmt"
	"slices"

	"liftlint/internal/gear"
	"liftlint/internal/nearest"
	"liftlint/internal/source"
)

func (l *linker) support(list []fields) Support {
	var s Support
	for _, f := range list { // the schema lets one through
		s = Support{Pointer: f.pointer(), From: f.text("from")}
		l.between(&s, f.of("by").items())
		legs := f.of("legs").items()
		l.uniqueLegs(legs)
		for i, leg := range legs {
			l.addLeg(&s, l.leg(leg, s, i), parked(leg))
		}
		s.Links = slices.DeleteFunc(s.Links, func(link LinkUse) bool { return len(link.Legs) == 0 })
		l.allLegsOfBridle(s)
		if !slices.ContainsFunc(legs, func(leg fields) bool { return !parked(leg) }) {
			l.fault(WrongPart, f.of("legs").node, "every leg is parked: at least one has to carry the load")
		}
	}
	return s
}

// between links what is between the hook and the legs.
func (l *linker) between(s *Support, by []fields) {
	for i, f := range by {
		u, ok := l.use(f, gear.ShackleKind, gear.MasterLinkKind, gear.BridleKind)
		if !ok || !l.ownPlace(f) {
			continue
		}
		b, isBridle := u.Item.(*gear.Bridle)
		if !isBridle {
			s.By = append(s.By, u)
			continue
		}
		if i < len(by)-1 {
			l.fault(WrongPart, f.node, "a bridle brings its own legs: it comes last, nothing hangs between it and them")
		}
		s.Bridle = &BridleUse{Pointer: f.pointer(), Bridle: b}
		if b.Master != nil {
			s.By = append(s.By, Use{Pointer: f.pointer(), Item: b.Master})
		}
	}
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

// parked reports whether a leg is hung up out of the way.
func parked(leg fields) bool { return leg.of("end").text("kind") == "parked" }

// legName is the leg's own name, or its number counted from one.
func legName(f fields, index int) string {
	if name := f.text("id"); name != "" {
		return name
	}
	return fmt.Sprint(index + 1)
}

// uniqueLegs also reports a leg that is called by the number of another.
func (l *linker) uniqueLegs(legs []fields) {
	l.unique("legs", legs)
	numbered := map[string]source.Range{}
	for i, f := range legs {
		if f.text("id") == "" {
			numbered[legName(f, i)] = f.node.Place.Value
		}
	}
	for _, f := range legs {
		id := f.node.Get("id")
		if id == nil {
			continue
		}
		if at, taken := numbered[id.Text]; taken {
			l.faultWith(DuplicateID, id, fmt.Sprintf("%q is also the number of a leg without an id: give this one another id, or that one an id too", id.Text), "the leg of that number", at)
		}
	}
}

func (l *linker) leg(f fields, s Support, index int) Leg {
	leg := Leg{Pointer: f.pointer(), ID: s.From + "/" + legName(f, index), StatedAngle: f.angle("angle_from_horizontal")}
	hasSling := false
	for n, d := range f.of("down").items() {
		u, ok := l.use(d, gear.WireRopeSlingKind, gear.ShackleKind, gear.HookKind)
		// What it is may not be known, or be wrong: one complaint is enough.
		hasSling = hasSling || !ok || u.Item.Base().Kind == gear.WireRopeSlingKind
		if !ok {
			continue
		}
		l.beginning(d, n == 0, s.Bridle)
		leg.Down = append(leg.Down, u)
		if n == 0 && s.Bridle != nil {
			leg.Link = linkOf(s.Bridle.Bridle, u.Item)
		}
	}
	switch end := f.of("end"); {
	case !parked(f):
		leg.End = l.end(end)
	case s.Bridle == nil:
		l.fault(WrongPart, end.node, "only a leg of a bridle is parked: leave out a leg that is not used")
	}
	if !hasSling {
		l.fault(WrongPart, f.of("down").node, "a leg needs a sling among its parts")
	}
	l.hooksAreLowest(f, leg)
	return leg
}

// hooksAreLowest reports a hook with something below it: a leg's hook is its
// last part.
func (l *linker) hooksAreLowest(f fields, leg Leg) {
	for _, u := range leg.Down[:max(0, len(leg.Down)-1)] {
		if u.Item.Base().Kind == gear.HookKind {
			l.fault(WrongPart, f.of("down").node, fmt.Sprintf("%s is a hook, and goes into an attachment: it is the lowest part of its leg", u.Item.Base().ID))
		}
	}
}

func (l *linker) end(f fields) End {
	at := f.node.Get("at")
	if at == nil {
		return End{Pointer: f.pointer()}
	}
	a, ok := l.attachments[at.Text]
	switch _, isGear := l.items[at.Text]; {
	case ok:
	case isGear:
		l.fault(UnknownReference, at, fmt.Sprintf("%q is an item of gear: a leg ends at an attachment of the load", at.Text))
	default:
		l.fault(UnknownReference, at, fmt.Sprintf("no attachment of the load has the id %q%s", at.Text, nearest.Hint(at.Text, l.pointIDs)))
	}
	return End{Pointer: at.Pointer, Attachment: a}
}
