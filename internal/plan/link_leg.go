package plan

import (
	"fmt"
	"slices"

	"liftlint/internal/gear"
	"liftlint/internal/source"
)

// legs links the legs of one support.
func (l *linker) legs(all []Support, index int, legs []fields) {
	s := &all[index]
	l.uniqueLegs(legs)
	for i, f := range legs {
		l.addLeg(s, l.leg(f, all, index, i), parked(f))
	}
	s.Links = slices.DeleteFunc(s.Links, func(link LinkUse) bool { return len(link.Legs) == 0 })
	if block := s.block(); block != nil && len(legs) > 1 {
		l.fault(WrongPart, legs[1].node, fmt.Sprintf("%s is a sheave block and takes one sling: give each sling a block of its own", block.Base().ID))
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

func (l *linker) leg(f fields, all []Support, support, index int) Leg {
	s := all[support]
	leg := Leg{
		Pointer:     f.pointer(),
		ID:          s.From + "/" + legName(f, index),
		Numbered:    f.text("id") == "",
		StatedAngle: f.angle("angle_from_horizontal"),
		Doubled:     f.truth("doubled"),
	}
	known := l.down(f, &leg, s)
	switch end := f.of("end"); {
	case !parked(f):
		leg.End = l.end(end, all, support)
	case s.Bridle == nil:
		l.fault(WrongPart, end.node, "only a leg of a bridle is parked: leave out a leg that is not used")
		leg.End.Kind = Parked
	default:
		leg.End.Kind = Parked
	}
	if known {
		l.fits(f, leg, s)
	}
	l.hooksAreLowest(f, leg)
	return leg
}

// inLegs lists the kinds that stand in legs.
func inLegs() []gear.Kind {
	return append(gear.SlingKinds(), gear.ShackleKind, gear.HookKind, gear.LoadCellKind, gear.TurnbuckleKind, gear.AdjusterKind, gear.SwivelKind)
}

// down links the parts of a leg. It is false where not all are known, or are
// wrong: one complaint about them is enough.
func (l *linker) down(f fields, leg *Leg, s Support) bool {
	known := true
	for n, d := range f.of("down").items() {
		u, ok := l.use(d, inLegs()...)
		if !ok {
			known = false
			continue
		}
		l.beginning(d, n == 0, s.Bridle)
		leg.Down = append(leg.Down, u)
		if n == 0 && s.Bridle != nil {
			leg.Link = linkOf(s.Bridle.Bridle, u.Item)
		}
	}
	return known
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
